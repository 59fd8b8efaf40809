package umbercard.desk.canvas;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import umbercard.door.Place;
import umbercard.geometry.Point;

/** Shows places over the card: a dark line inside a light one, so that it reads on dark and on light alike. */
final class PlacePainter {
    private static final float LINE = 1.4f;
    private static final float HALO = 3.6f;
    private static final double DOT = 3.5;

    private final Color line;
    private final Color halo;

    PlacePainter(Color line, Color halo) {
        this.line = line;
        this.halo = halo;
    }

    void paint(Graphics2D g, List<Place> places, AffineTransform toScreen) {
        for (Place place : places) {
            if (place instanceof Place.At at) {
                dot(g, at.point(), toScreen);
            } else if (place instanceof Place.Between between) {
                stroke(g, Shapes.through(List.of(between.from(), between.to())), toScreen);
            } else if (place instanceof Place.Along along) {
                stroke(g, Shapes.through(along.line()), toScreen);
            } else if (place instanceof Place.Over over) {
                stroke(g, Shapes.of(over.region()), toScreen);
            }
        }
    }

    /** The pixels that showing the places tints; empty where none shows. */
    static Optional<Rectangle> around(List<Place> places, AffineTransform toScreen) {
        return places.stream()
                .flatMap(PlacePainter::shapes)
                .map(shape -> toScreen.createTransformedShape(shape).getBounds())
                .map(PlacePainter::grown)
                .reduce(Rectangle::union);
    }

    private static Rectangle grown(Rectangle tight) {
        int edge = (int) Math.ceil(Math.max(HALO, DOT + 1)) + 1;
        return new Rectangle(tight.x - edge, tight.y - edge, tight.width + 2 * edge, tight.height + 2 * edge);
    }

    private static Stream<Shape> shapes(Place place) {
        if (place instanceof Place.At at) {
            return Stream.of(Shapes.through(List.of(at.point(), at.point())));
        } else if (place instanceof Place.Between between) {
            return Stream.of(Shapes.through(List.of(between.from(), between.to())));
        } else if (place instanceof Place.Along along) {
            return Stream.of(Shapes.through(along.line()));
        } else if (place instanceof Place.Over over) {
            return over.region().outlines().stream().map(Shapes::of);
        }
        return Stream.empty();
    }

    private void dot(Graphics2D g, Point at, AffineTransform toScreen) {
        Point2D p = toScreen.transform(new Point2D.Double(at.x(), at.y()), null);
        g.setColor(halo);
        g.fill(new Ellipse2D.Double(p.getX() - DOT - 1, p.getY() - DOT - 1, 2 * DOT + 2, 2 * DOT + 2));
        g.setColor(line);
        g.fill(new Ellipse2D.Double(p.getX() - DOT, p.getY() - DOT, 2 * DOT, 2 * DOT));
    }

    private void stroke(Graphics2D g, Shape shape, AffineTransform toScreen) {
        Shape onScreen = toScreen.createTransformedShape(shape);
        g.setColor(halo);
        g.setStroke(new BasicStroke(HALO, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(onScreen);
        g.setColor(line);
        g.setStroke(new BasicStroke(LINE, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(onScreen);
    }
}
