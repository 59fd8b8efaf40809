package umbercard.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/**
 * Closes an open stroke along the border of the frame, which is {@code ratio} wide and 1 high with its upper left corner at
 * the origin.
 *
 * <p>An end that lies outside the frame, on its border, or inside but no further than {@code reach} from it goes straight to
 * the nearest place on the border. If both ends do, the outline follows the border from the stroke's end back to its start,
 * corners included. If one or both stay inside, it closes by a straight line from end to start.
 *
 * <p>Of the two ways round, a stroke from the left side to the right or back takes the one along the lower side; any other
 * takes the shorter, and of two equal ways the clockwise one as seen on the card. Inside the frame the two ways cover what the
 * other leaves.
 */
public final class BorderClosing {
    private final double ratio;

    private BorderClosing(double ratio) {
        this.ratio = ratio;
    }

    /**
     * The closed outline. A stroke of fewer than two nodes comes back as it is.
     *
     * @param ratio the frame's width, over zero
     * @param reach how far inside the border an end may lie and still go out to it, 0 or more
     * @param otherSide take the other way round
     */
    public static Outline close(Path stroke, double ratio, double reach, boolean otherSide) {
        if (!(ratio > 0) || !(reach >= 0)) {
            throw new IllegalArgumentException(
                    "a frame has a width and reach is not negative: " + ratio + ", " + reach);
        }
        return new BorderClosing(ratio).closed(stroke, reach, otherSide);
    }

    private Outline closed(Path stroke, double reach, boolean otherSide) {
        if (stroke.nodes().size() < 2) {
            return new Outline(stroke.nodes());
        }
        List<Node> nodes = new ArrayList<>(stroke.nodes());
        open(nodes);
        Point start = nodes.get(0).at();
        Point end = nodes.get(nodes.size() - 1).at();
        if (distanceInside(start) > reach || distanceInside(end) > reach) {
            return new Outline(nodes);
        }
        for (Point point : way(onBorder(end), onBorder(start), otherSide, new Outline(nodes))) {
            if (!point.equals(nodes.get(nodes.size() - 1).at()) && !point.equals(start)) {
                nodes.add(Node.sharp(point));
            }
        }
        return new Outline(nodes);
    }

    private List<Point> way(Point from, Point to, boolean otherSide, Outline stroke) {
        List<Point> way = new ArrayList<>(List.of(from));
        if (!from.equals(to)) {
            way.addAll(takesClockwise(from, to) != otherSide ? clockwise(from, to) : counterClockwise(from, to));
        } else if (otherSide) {
            way.addAll(allRound(from, Green.moments(stroke.segments()).area() < 0));
        }
        way.add(to);
        return way;
    }

    /** Takes away the outermost pulls, which an open stroke does not draw. */
    private static void open(List<Node> nodes) {
        Node first = nodes.get(0);
        nodes.set(0, new Node(first.at(), first.at(), first.out(), first.round()));
        int last = nodes.size() - 1;
        Node end = nodes.get(last);
        nodes.set(last, new Node(end.at(), end.in(), end.at(), end.round()));
    }

    /** How far inside the border a point lies; 0 or less on it and outside. */
    private double distanceInside(Point p) {
        return Math.min(Math.min(p.x(), ratio - p.x()), Math.min(p.y(), 1 - p.y()));
    }

    /** The nearest place on the border. */
    private Point onBorder(Point p) {
        double inside = distanceInside(p);
        if (inside <= 0) {
            return new Point(Math.max(0, Math.min(ratio, p.x())), Math.max(0, Math.min(1, p.y())));
        }
        if (inside == p.x()) {
            return new Point(0, p.y());
        }
        if (inside == ratio - p.x()) {
            return new Point(ratio, p.y());
        }
        return new Point(p.x(), inside == p.y() ? 0 : 1);
    }

    private boolean takesClockwise(Point from, Point to) {
        if (from.x() == ratio && to.x() == 0) {
            return true;
        }
        if (from.x() == 0 && to.x() == ratio) {
            return false;
        }
        return ahead(place(from), place(to)) <= ratio + 1;
    }

    /** How far along the border a place on it lies, clockwise as seen on the card from the upper left corner. */
    private double place(Point p) {
        if (p.y() == 0) {
            return p.x();
        }
        if (p.x() == ratio) {
            return ratio + p.y();
        }
        return p.y() == 1 ? ratio + 1 + (ratio - p.x()) : ratio + 1 + ratio + (1 - p.y());
    }

    private double ahead(double from, double to) {
        return to >= from ? to - from : to - from + 2 * (ratio + 1);
    }

    /** The corners met on the way. */
    private List<Point> clockwise(Point from, Point to) {
        double way = ahead(place(from), place(to));
        return allRound(from, true).stream()
                .filter(corner -> ahead(place(from), place(corner)) <= way)
                .toList();
    }

    private List<Point> counterClockwise(Point from, Point to) {
        List<Point> corners = new ArrayList<>(clockwise(to, from));
        Collections.reverse(corners);
        return corners;
    }

    /** All four corners in the order met: what a stroke that ends where it starts leaves over lies between it and them. */
    private List<Point> allRound(Point from, boolean clockwise) {
        List<Point> corners =
                new ArrayList<>(List.of(new Point(0, 0), new Point(ratio, 0), new Point(ratio, 1), new Point(0, 1)));
        corners.sort(Comparator.comparingDouble(corner -> ahead(place(from), place(corner))));
        if (!clockwise) {
            Collections.reverse(corners);
        }
        return corners;
    }
}
