package umbercard.geometry;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/**
 * Polygons for outlines that keep the area of the drawn curve. Each curved segment is cut at equal steps of its parameter,
 * so finely that no chord strays from it by more than {@link #TOLERANCE}; then the cuts are moved outward until the polygon
 * has the area that Green's theorem gives for the curve. A segment's own area is kept to the rounding of doubles, so a
 * simple outline's is too; where outlines cross within a chord, at most that chord's share is off: under 2/3 of the
 * tolerance times the chord's length, 7e-8 for a chord of 0.005.
 */
final class Flattening {
    /** The greatest distance between a curve and its chord before the cuts are moved, in units. */
    static final double TOLERANCE = 2e-5;

    /** A bound on the steps of one segment, reached only where its pulls lie more than 100 units away. */
    private static final int MOST_STEPS = 4096;

    private final double tolerance;

    private Flattening(double tolerance) {
        this.tolerance = tolerance;
    }

    /** The closed ring of an outline; its last coordinate equals its first. Empty for fewer than two nodes. */
    static Coordinate[] ring(Outline outline) {
        return new Flattening(TOLERANCE).closed(outline);
    }

    /** A ring whose chords may stray further, or less far, than usual; segments keep their areas all the same. */
    static Coordinate[] ring(Outline outline, double tolerance) {
        return new Flattening(tolerance).closed(outline);
    }

    private Coordinate[] closed(Outline outline) {
        List<Coordinate> ring = new ArrayList<>();
        for (Cubic segment : outline.segments()) {
            Cubic held = new Cubic(
                    Grid.held(segment.start()),
                    Grid.held(segment.pullStart()),
                    Grid.held(segment.pullEnd()),
                    Grid.held(segment.end()));
            append(held, ring);
        }
        if (!ring.isEmpty()) {
            ring.add(ring.get(0).copy());
        }
        return ring.toArray(new Coordinate[0]);
    }

    /** Adds a segment's start and cuts, but not its end. */
    private void append(Cubic segment, List<Coordinate> ring) {
        int steps = steps(segment);
        Coordinate[] cuts = new Coordinate[steps + 1];
        for (int i = 0; i <= steps; i++) {
            Point at = segment.at((double) i / steps);
            cuts[i] = new Coordinate(at.x(), at.y());
        }
        cuts[0] = new Coordinate(segment.start().x(), segment.start().y());
        cuts[steps] = new Coordinate(segment.end().x(), segment.end().y());
        if (steps > 1) {
            keepArea(segment, cuts);
        }
        for (int i = 0; i < steps; i++) {
            ring.add(cuts[i]);
        }
    }

    /**
     * Enough equal steps of the parameter: a chord strays by at most 1/8 of the greatest second derivative, which is 6 times
     * the greatest second difference of the control points. Even, so that a segment and its reverse are cut alike.
     */
    private int steps(Cubic c) {
        if (c.isLine()) {
            return 1;
        }
        double bend = Math.max(bend(c.start(), c.pullStart(), c.pullEnd()), bend(c.pullStart(), c.pullEnd(), c.end()));
        double half = Math.ceil(Math.sqrt(6 * bend / (8 * tolerance)) / 2);
        return 2 * (int) Math.max(1, Math.min(MOST_STEPS / 2.0, half));
    }

    private static double bend(Point a, Point b, Point c) {
        return Math.hypot(a.x() - 2 * b.x() + c.x(), a.y() - 2 * b.y() + c.y());
    }

    private void keepArea(Cubic segment, Coordinate[] cuts) {
        int last = cuts.length - 1;
        double[] missing = missingAreas(segment, last);
        double[] shifts = new double[last];
        for (int i = 1; i < last; i++) {
            double before = i == 1 ? missing[0] : missing[i - 1] / 2;
            double after = i == last - 1 ? missing[last - 1] : missing[i] / 2;
            shifts[i] = before + after;
        }
        Coordinate[] still = cuts.clone();
        for (int i = 1; i < last; i++) {
            cuts[i] = shifted(still[i], still[i - 1], still[i + 1], shifts[i]);
        }
        double wanted = Green.sector(segment);
        double rest = wanted - fan(cuts);
        int middle = last / 2;
        cuts[middle] = shifted(cuts[middle], cuts[middle - 1], cuts[middle + 1], rest);
    }

    /** The area between each arc and its chord. */
    private static double[] missingAreas(Cubic segment, int steps) {
        double[] areas = new double[steps];
        for (int i = 0; i < steps; i++) {
            areas[i] = Green.sector(segment.part((double) i / steps, (i + 1.0) / steps));
        }
        return areas;
    }

    /** The signed area of the polygon that the cuts and the segment's chord enclose. */
    private static double fan(Coordinate[] cuts) {
        double twice = 0;
        Coordinate o = cuts[0];
        for (int i = 1; i < cuts.length - 1; i++) {
            twice += (cuts[i].x - o.x) * (cuts[i + 1].y - o.y) - (cuts[i + 1].x - o.x) * (cuts[i].y - o.y);
        }
        return twice / 2;
    }

    /**
     * A cut moved at right angles to the line between its neighbors so that the polygon gains {@code area}; not further than
     * the tolerance, which only a segment that turns back on itself asks for.
     */
    private Coordinate shifted(Coordinate cut, Coordinate before, Coordinate after, double area) {
        double dx = after.x - before.x;
        double dy = after.y - before.y;
        double length = Math.hypot(dx, dy);
        if (length == 0) {
            return cut;
        }
        double by = Math.max(-tolerance, Math.min(tolerance, 2 * area / length));
        return new Coordinate(cut.x + by * dy / length, cut.y - by * dx / length);
    }
}
