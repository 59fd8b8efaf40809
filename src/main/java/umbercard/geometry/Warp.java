package umbercard.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Moves a line across the frame, and everything with it: what lies above the line goes onto what lies above its new place by
 * one affine map, what lies below by another, and both agree along the line. Places move up and down only. The frame is
 * {@code ratio} wide and 1 high with its upper left corner at the origin; y runs down.
 *
 * <p>A level line that stays level leaves the frame's upper and lower edges where they are. About a tilted line no affine map
 * can: there each side is stretched just so much that one corner of its edge stays and the rest of the edge stays or leaves the
 * frame; so what covers the frame goes on covering it. Only corners on the line's own side count. A side that has none, since
 * the line lies on the frame's edge or beyond it, moves along with the line unstretched. A line that leaves the frame through
 * its upper or lower edge may uncover what lies beyond the place where it does.
 *
 * <p>No side is squeezed to less than {@link #LEAST} of its height, even by a line that moves to the frame's edge or out of it,
 * nor stretched to more than as many times, so every warp can be undone.
 *
 * <p>Curves are cut where they cross the line, then each part is carried by its own map: the warped curve is the exact image of
 * the drawn one. Where a curve crosses it gets a node, which is sharp, since the two maps bend it there, unless it comes out
 * straight; a round node on the line that is bent becomes sharp for the same reason. Where a curve only touches the line it gets
 * no node.
 */
public final class Warp {
    /** The least stretch. */
    static final double LEAST = 1e-3;

    /** Pulls that turn by less than this, as a sine, leave a node round. */
    private static final double STRAIGHT = 1e-9;

    /** The line y = height + slope x. */
    private record Slant(double height, double slope) {
        static Slant along(Line line) {
            double slope = (line.to().y() - line.from().y())
                    / (line.to().x() - line.from().x());
            double height = line.from().y() - slope * line.from().x();
            if (!Double.isFinite(slope) || !Double.isFinite(height)) {
                throw new IllegalArgumentException("a line that is to be moved is not upright: " + line);
            }
            return new Slant(height, slope);
        }

        double at(double x) {
            return height + slope * x;
        }

        /** How far below the line a place lies. */
        double below(Point p) {
            return p.y() - at(p.x());
        }
    }

    /** The affine map of one side: what lies so much below the old line comes to lie {@code stretch} times as much below the new. */
    private record Side(Slant from, Slant to, double stretch) {
        Point mapped(Point p) {
            double y = stretch == 1 && from.equals(to) ? p.y() : to.at(p.x()) + stretch * from.below(p);
            return new Point(p.x(), y);
        }

        Cubic mapped(Cubic c) {
            return new Cubic(mapped(c.start()), mapped(c.pullStart()), mapped(c.pullEnd()), mapped(c.end()));
        }

        Side inverse() {
            return new Side(to, from, 1 / stretch);
        }
    }

    /** A part of a curve on one side of the line, before and after; whether it starts at a node of the curve that was drawn. */
    private record Part(Cubic warped, Side side, boolean fromNode) {}

    private final Side above;
    private final Side below;

    private Warp(Side above, Side below) {
        this.above = above;
        this.below = below;
    }

    /**
     * The warp that moves a line.
     *
     * @param from where the line lies; it goes on beyond its ends, and is not upright
     * @param to where it is to lie, of another tilt or not; not upright
     * @param ratio the frame's width, over zero
     */
    public static Warp between(Line from, Line to, double ratio) {
        if (!(ratio > 0) || !Double.isFinite(ratio)) {
            throw new IllegalArgumentException("a frame has a width: " + ratio);
        }
        Slant old = Slant.along(from);
        Slant moved = Slant.along(to);
        return new Warp(
                new Side(old, moved, stretch(old, moved, ratio, 0)),
                new Side(old, moved, stretch(old, moved, ratio, 1)));
    }

    /** The greatest stretch that a corner of an edge needs in order to stay where it is. */
    private static double stretch(Slant from, Slant to, double ratio, double edge) {
        double most = Double.NaN;
        for (double x : new double[] {0, ratio}) {
            double before = edge == 0 ? from.at(x) : 1 - from.at(x);
            double after = edge == 0 ? to.at(x) : 1 - to.at(x);
            if (before > 0) {
                most = Double.isNaN(most) ? after / before : Math.max(most, after / before);
            }
        }
        if (Double.isNaN(most)) {
            return 1;
        }
        return Math.max(LEAST, Math.min(1 / LEAST, most));
    }

    /** The warp back. */
    public Warp inverse() {
        return new Warp(above.inverse(), below.inverse());
    }

    /** Whether the line does not move, so nothing does. */
    public boolean isIdentity() {
        return above.from.equals(above.to) && above.stretch == 1 && below.stretch == 1;
    }

    /** By what an area above the line is multiplied. */
    public double stretchAbove() {
        return above.stretch;
    }

    /** By what an area below the line is multiplied. */
    public double stretchBelow() {
        return below.stretch;
    }

    /** Where a place goes. */
    public Point mapped(Point point) {
        return sideOf(point).mapped(point);
    }

    private Side sideOf(Point point) {
        return above.from.below(point) < 0 ? above : below;
    }

    /** The line between the places where the ends go; a line on one side of the moved one goes there as a whole. */
    public Line mapped(Line line) {
        return new Line(mapped(line.from()), mapped(line.to()));
    }

    /** The image of an outline, with nodes where it crosses the line; the same outline where nothing moves. */
    public Outline mapped(Outline outline) {
        List<Node> nodes = outline.nodes();
        if (isIdentity() || nodes.size() < 2) {
            return isIdentity() ? outline : outline.mapped(this::mapped);
        }
        List<Part> parts = parts(outline.segments());
        return new Outline(nodes(parts, nodes, parts.get(parts.size() - 1)));
    }

    /** The image of a path, with nodes where it crosses the line; the same path where nothing moves. */
    public Path mapped(Path path) {
        List<Node> nodes = path.nodes();
        if (isIdentity() || nodes.size() < 2) {
            return isIdentity() ? path : path.mapped(this::mapped);
        }
        List<Part> parts = parts(path.segments());
        Part last = parts.get(parts.size() - 1);
        List<Node> warped = nodes(parts, nodes, last);
        Node first = warped.get(0);
        warped.set(
                0,
                new Node(
                        first.at(),
                        mapped(nodes.get(0).in()),
                        first.out(),
                        nodes.get(0).round()));
        Node end = nodes.get(nodes.size() - 1);
        warped.add(new Node(last.warped.end(), last.warped.pullEnd(), mapped(end.out()), end.round()));
        return new Path(warped);
    }

    private List<Part> parts(List<Cubic> segments) {
        List<Part> parts = new ArrayList<>();
        segments.forEach(segment -> cut(segment, parts));
        return parts;
    }

    private void cut(Cubic c, List<Part> parts) {
        Slant line = above.from;
        SignChanges changes = new SignChanges(new Bernstein(
                line.below(c.start()), line.below(c.pullStart()), line.below(c.pullEnd()), line.below(c.end())));
        double[] cuts = changes.parameters();
        double from = 0;
        for (int i = 0; i <= cuts.length; i++) {
            double to = i < cuts.length ? cuts[i] : 1;
            Side side = changes.side(from, to) < 0 ? above : below;
            parts.add(new Part(side.mapped(part(c, from, to)), side, from == 0));
            from = to;
        }
    }

    /** A line's parts are lines too. */
    private static Cubic part(Cubic c, double from, double to) {
        if (from == 0 && to == 1) {
            return c;
        }
        Point start = from == 0 ? c.start() : c.at(from);
        Point end = to == 1 ? c.end() : c.at(to);
        if (c.isLine()) {
            return new Cubic(start, start, end, end);
        }
        Cubic part = c.part(from, to);
        return new Cubic(start, part.pullStart(), part.pullEnd(), end);
    }

    /** A node at the start of each part. */
    private static List<Node> nodes(List<Part> parts, List<Node> drawn, Part last) {
        List<Node> nodes = new ArrayList<>();
        int next = 0;
        Part before = last;
        for (Part part : parts) {
            Point in = before.warped.pullEnd();
            Point at = part.warped.start();
            Point out = part.warped.pullStart();
            boolean smooth = before.side.equals(part.side) || isStraight(in, at, out);
            boolean round = part.fromNode ? drawn.get(next++).round() && smooth : smooth && !part.warped.isLine();
            // A pull that lay on its point stays on it, to the last bit.
            nodes.add(new Node(at, in.equals(before.warped.end()) ? at : in, out, round));
            before = part;
        }
        return nodes;
    }

    private static boolean isStraight(Point in, Point at, Point out) {
        Vector before = Vector.between(in, at).unit();
        Vector after = Vector.between(at, out).unit();
        return Math.abs(before.x() * after.y() - before.y() * after.x()) <= STRAIGHT && before.dot(after) >= 0;
    }
}
