package umbercard.desk.canvas;

import java.awt.geom.Path2D;
import java.util.List;
import umbercard.geometry.Cubic;
import umbercard.geometry.Outline;
import umbercard.geometry.Path;
import umbercard.geometry.Point;
import umbercard.geometry.Region;

/** Outlines as shapes that the screen can fill: in the outline's own units, by the non-zero rule. */
public final class Shapes {
    private Shapes() {}

    public static Path2D of(Outline outline) {
        Path2D shape = open(outline.segments());
        if (outline.nodes().size() > 1) {
            shape.closePath();
        }
        return shape;
    }

    /** A region with its holes, to be filled by the even-odd rule. */
    public static Path2D of(Region region) {
        Path2D all = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        region.outlines().forEach(ring -> all.append(of(ring), false));
        return all;
    }

    public static Path2D of(Path path) {
        return open(path.segments());
    }

    /** A straight-sided line through the points. */
    public static Path2D through(List<Point> points) {
        return of(Path.through(points));
    }

    private static Path2D open(List<Cubic> segments) {
        Path2D shape = new Path2D.Double(Path2D.WIND_NON_ZERO);
        for (Cubic segment : segments) {
            if (shape.getCurrentPoint() == null) {
                shape.moveTo(segment.start().x(), segment.start().y());
            }
            if (segment.isLine()) {
                shape.lineTo(segment.end().x(), segment.end().y());
            } else {
                shape.curveTo(
                        segment.pullStart().x(),
                        segment.pullStart().y(),
                        segment.pullEnd().x(),
                        segment.pullEnd().y(),
                        segment.end().x(),
                        segment.end().y());
            }
        }
        return shape;
    }
}
