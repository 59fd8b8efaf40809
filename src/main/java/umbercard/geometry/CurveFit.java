package umbercard.geometry;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * Fits cubics to what the hand drew: P. J. Schneider 1990, "An Algorithm for Automatically Fitting Digitized Curves",
 * Graphics Gems, pp. 612-626. Each run of points between two corners is fitted by one cubic; where a point strays further
 * from it than the tolerance, the run is cut there and both halves are fitted with a common tangent.
 *
 * <p>A corner is where the drawn line turns by {@link #CORNER_DEGREES} or more within {@link #WINDOW} tolerances before and
 * after: with half a screen pixel as the tolerance, within six pixels. Corners come out as sharp nodes, all others as round
 * ones. A run that is straight within the tolerance comes out as a line. Every raw point lies within the tolerance of the
 * curve.
 *
 * <p>A pointer reports whole pixels, and a curve that follows their steps takes a node every few of them. So a raw point may
 * stand for a square, {@code grain} to each side of it: then the steps are taken out within the squares first
 * ({@link Smoothing}), and it is each square, not its middle, that lies within the tolerance of the curve. Ends and corners stay
 * where they were reported.
 */
public final class CurveFit {
    /** A turn that a painter means as a corner; common practice, no source. */
    static final double CORNER_DEGREES = 60;

    /** Directions are taken over this many tolerances, so that the steps of a pixel grid are not taken for turns. */
    static final double WINDOW = 12;

    private final Stroke stroke;
    private final double tolerance;
    private final double grain;
    private final List<Node> nodes = new ArrayList<>();

    private CurveFit(Stroke stroke, double tolerance, double grain) {
        this.stroke = stroke;
        this.tolerance = tolerance;
        this.grain = grain;
    }

    /**
     * The path through an open stroke; it starts and ends where the stroke does. Points that repeat the one before are passed
     * over; fewer than two different ones give a path of one node or none.
     *
     * @param tolerance over zero, in the unit of the points: half a screen pixel
     */
    public static Path fit(List<Point> raw, double tolerance) {
        return fit(raw, tolerance, 0);
    }

    /**
     * The same for points that were rounded.
     *
     * @param grain how far at most each coordinate was moved by rounding, 0 or more: half a screen pixel
     */
    public static Path fit(List<Point> raw, double tolerance, double grain) {
        Stroke stroke = Stroke.open(raw, WINDOW * check(tolerance), checkGrain(grain));
        return new Path(stroke.size() < 2 ? sharp(stroke) : new CurveFit(stroke, tolerance, grain).fitted());
    }

    /**
     * The outline of a stroke that closes by itself. A gap between its end and its start that is wider than the directions'
     * window is closed by a straight line with a corner at both ends; a narrower one is passed smoothly.
     *
     * @param tolerance over zero, in the unit of the points: half a screen pixel
     */
    public static Outline fitClosed(List<Point> raw, double tolerance) {
        return fitClosed(raw, tolerance, 0);
    }

    /**
     * The same for points that were rounded.
     *
     * @param grain how far at most each coordinate was moved by rounding, 0 or more: half a screen pixel
     */
    public static Outline fitClosed(List<Point> raw, double tolerance, double grain) {
        Stroke stroke = Stroke.closed(raw, WINDOW * check(tolerance), checkGrain(grain));
        if (stroke.size() < 4) {
            return new Outline(sharp(Stroke.open(raw, tolerance, 0)));
        }
        List<Node> nodes = new CurveFit(stroke, tolerance, grain).fitted();
        Node last = nodes.remove(nodes.size() - 1);
        Node first = nodes.get(0);
        nodes.set(0, new Node(first.at(), last.in(), first.out(), !stroke.isCorner(0)));
        return new Outline(nodes);
    }

    private static double check(double tolerance) {
        if (!(tolerance > 0) || !Double.isFinite(tolerance)) {
            throw new IllegalArgumentException("a tolerance is over zero: " + tolerance);
        }
        return tolerance;
    }

    private static double checkGrain(double grain) {
        if (!(grain >= 0) || !Double.isFinite(grain)) {
            throw new IllegalArgumentException("a grain is 0 or more: " + grain);
        }
        return grain;
    }

    private static List<Node> sharp(Stroke stroke) {
        return stroke.points().stream().map(Node::sharp).toList();
    }

    private List<Node> fitted() {
        nodes.add(Node.sharp(stroke.at(0)));
        int first = 0;
        for (int i = 1; i < stroke.size(); i++) {
            if (i == stroke.size() - 1 || stroke.isCorner(i)) {
                run(first, i);
                first = i;
            }
        }
        return nodes;
    }

    /** What is still to be fitted, with unit tangents that both point into it. */
    private record Part(int first, int last, Vector start, Vector end) {}

    /** From corner to corner. The parts left over wait on a stack of their own, so a long stroke cannot exhaust the thread's. */
    private void run(int first, int last) {
        if (isStraight(first, last)) {
            nodes.add(Node.sharp(stroke.at(last)));
            return;
        }
        Deque<Part> waiting = new ArrayDeque<>();
        waiting.push(new Part(first, last, stroke.directionAfter(first, last), stroke.directionBefore(last, first)));
        while (!waiting.isEmpty()) {
            Part part = waiting.pop();
            RunFit fit = new RunFit(
                    stroke.points().subList(part.first, part.last + 1),
                    stroke.raw().subList(part.first, part.last + 1),
                    grain,
                    part.start,
                    part.end);
            Optional<Cubic> cubic = fit.within(tolerance);
            if (cubic.isPresent()) {
                append(cubic.get(), part.last != last);
            } else {
                int cut = part.first + fit.worst();
                Vector back = stroke.tangentBack(cut, part.first, part.last);
                waiting.push(new Part(cut, part.last, back.times(-1), part.end));
                waiting.push(new Part(part.first, cut, part.start, back));
            }
        }
    }

    private void append(Cubic cubic, boolean round) {
        int before = nodes.size() - 1;
        Node start = nodes.get(before);
        nodes.set(before, new Node(start.at(), start.in(), cubic.pullStart(), start.round()));
        nodes.add(new Node(cubic.end(), cubic.pullEnd(), cubic.end(), round));
    }

    private boolean isStraight(int first, int last) {
        for (int i = first + 1; i < last; i++) {
            Point foot = RunFit.nearest(stroke.raw().get(i), stroke.at(first), stroke.at(last));
            if (RunFit.distanceToSquare(foot, stroke.raw().get(i), grain) > tolerance) {
                return false;
            }
        }
        return true;
    }
}
