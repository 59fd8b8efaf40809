package umbercard.photo;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import umbercard.geometry.Cubic;
import umbercard.geometry.CurveFit;
import umbercard.geometry.Node;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;

/**
 * Turns a traced ring into an outline that a painter can edit: few points, smooth between, sharp where it meets the frame,
 * straight along it. No outline crosses itself or another, and none leaves the frame.
 */
final class RingFit {
    private static final int TRIES = 4;

    private final double ratio;
    private final double tolerance;

    /**
     * @param ratio the frame's width
     * @param tolerance how far an outline may stray from its ring, in frame units
     */
    RingFit(double ratio, double tolerance) {
        this.ratio = ratio;
        this.tolerance = tolerance;
    }

    /**
     * The outlines of rings none of which crosses another. Where two smooth ones would cross, or one itself, those come
     * nearer to their rings, and have straight sides if nothing else helps: rings themselves never cross.
     */
    List<Outline> outlines(List<Ring> rings) {
        List<Outline> outlines =
                new ArrayList<>(rings.stream().map(ring -> outline(ring, 0)).toList());
        int[] tries = new int[rings.size()];
        BitSet crossed = Crossings.among(outlines);
        while (!crossed.isEmpty()) {
            boolean nearer = false;
            for (int i = crossed.nextSetBit(0); i >= 0; i = crossed.nextSetBit(i + 1)) {
                if (tries[i] < TRIES) {
                    tries[i]++;
                    outlines.set(i, outline(rings.get(i), tries[i]));
                    nearer = true;
                }
            }
            if (!nearer) {
                break;
            }
            crossed = Crossings.among(outlines);
        }
        return outlines;
    }

    private Outline outline(Ring ring, int tries) {
        if (tries == TRIES) {
            return Outline.polygon(corners(ring));
        }
        return inFrame(fitted(ring, tolerance / Math.pow(3, tries)));
    }

    private Outline fitted(Ring ring, double near) {
        int start = ring.border().indexOf(true);
        if (start < 0) {
            return CurveFit.fitClosed(ring.places(), near);
        }
        List<Node> nodes = new ArrayList<>();
        List<Point> run = new ArrayList<>(List.of(ring.places().get(start)));
        nodes.add(Node.sharp(run.get(0)));
        int count = ring.places().size();
        for (int i = 1; i <= count; i++) {
            int at = (start + i) % count;
            run.add(ring.places().get(at));
            if (ring.border().get(at)) {
                append(nodes, run, near);
                run = new ArrayList<>(List.of(ring.places().get(at)));
            }
        }
        // The last node is the first one again, reached: its pull belongs to the first.
        Node closing = nodes.remove(nodes.size() - 1);
        Node first = nodes.get(0);
        nodes.set(0, new Node(first.at(), closing.in(), first.out(), false));
        return new Outline(withoutStraightOnes(nodes));
    }

    /** Adds a run that begins at the last node and ends on the border. */
    private static void append(List<Node> nodes, List<Point> run, double near) {
        if (run.size() == 2) {
            nodes.add(Node.sharp(run.get(1)));
            return;
        }
        List<Node> curve = CurveFit.fit(run, near).nodes();
        Node last = nodes.remove(nodes.size() - 1);
        nodes.add(new Node(last.at(), last.in(), curve.get(0).out(), false));
        nodes.addAll(curve.subList(1, curve.size() - 1));
        Node end = curve.get(curve.size() - 1);
        nodes.add(new Node(end.at(), end.in(), end.at(), false));
    }

    /** Leaves out the nodes in the middle of a straight run along the frame. */
    private List<Node> withoutStraightOnes(List<Node> nodes) {
        List<Node> kept = new ArrayList<>();
        for (int i = 0; i < nodes.size(); i++) {
            Node node = nodes.get(i);
            Point before = nodes.get((i + nodes.size() - 1) % nodes.size()).at();
            Point after = nodes.get((i + 1) % nodes.size()).at();
            if (node.in().equals(node.at()) && node.out().equals(node.at()) && alongOneSide(before, node.at(), after)) {
                continue;
            }
            kept.add(node);
        }
        return kept;
    }

    private boolean alongOneSide(Point a, Point b, Point c) {
        return allAt(0, a.x(), b.x(), c.x())
                || allAt(ratio, a.x(), b.x(), c.x())
                || allAt(0, a.y(), b.y(), c.y())
                || allAt(1, a.y(), b.y(), c.y());
    }

    private static boolean allAt(double side, double a, double b, double c) {
        return a == side && b == side && c == side;
    }

    /** With every pull inside the frame the curve is, too: it stays within the hull of its four places. */
    private Outline inFrame(Outline outline) {
        return outline.mapped(place ->
                new Point(Math.min(ratio, Math.max(0, place.x())), Math.min(1, Math.max(0, place.y()))));
    }

    private List<Point> corners(Ring ring) {
        return withoutStraightOnes(ring.places().stream().map(Node::sharp).toList()).stream()
                .map(Node::at)
                .toList();
    }

    /** The signed area of an outline, in closed form (Green's theorem on Bernstein polynomials). */
    static double area(Outline outline) {
        double sum = 0;
        for (Cubic c : outline.segments()) {
            double chord = cross(c.start(), c.end());
            double first = 6 * cross(c.start(), c.pullStart()) + 3 * cross(c.start(), c.pullEnd());
            double second = 3 * cross(c.pullStart(), c.pullEnd()) + 3 * cross(c.pullStart(), c.end());
            sum += (chord + first + second + 6 * cross(c.pullEnd(), c.end())) / 20;
        }
        return sum;
    }

    private static double cross(Point a, Point b) {
        return a.x() * b.y() - b.x() * a.y();
    }
}
