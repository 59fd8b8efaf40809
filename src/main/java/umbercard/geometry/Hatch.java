package umbercard.geometry;

import java.util.function.IntPredicate;
import org.locationtech.jts.geom.Coordinate;

/**
 * Evenly spaced parallel lines over a frame from 0 to {@code ratio} across and 0 to 1 down, numbered from the upper left
 * corner to the lower right: a quick way to measure what outlines cover, by the stretches of the lines that lie in them.
 * Stretches are given across.
 *
 * <p>Along a line {@code y + SLOPE x + bend x²} stays the same. That map keeps areas, so the lengths of stretches across,
 * times the lines' distance, add up to the area; exactly for straight borders, but for their ends. The lines slant so that
 * no level or upright border runs along one of them, and bend so that no straight border does for long: what runs along a
 * line can be missed by half their distance.
 */
public final class Hatch implements Lines {
    private static final double SLOPE = 0.06;

    /** How much steeper the lines are at the frame's right side. */
    private static final double STEEPER = 0.6;

    /**
     * How far chords may stray from curves, in units: segments keep their areas, so stretches swing to both sides by as
     * much.
     */
    private static final double TOLERANCE = 8e-5;

    private final double distance;
    private final double bend;
    private final double[] lefts;
    private final double[] rights;

    /**
     * @param ratio the frame's width, over 0
     * @param density lines to the unit, over 0
     */
    public Hatch(double ratio, int density) {
        this.distance = 1.0 / density;
        this.bend = STEEPER / 2 / ratio;
        int count = (int) Math.ceil((1 + drop(ratio)) * density);
        lefts = new double[count];
        rights = new double[count];
        for (int line = 0; line < count; line++) {
            double level = level(line);
            lefts[line] = across(level - 1);
            rights[line] = Math.min(ratio, across(level));
        }
    }

    /** How much lower the line through the upper left corner would be drawn if it were level. */
    private double drop(double x) {
        return x * (SLOPE + bend * x);
    }

    /** The place across where a level line through the upper left corner drops by that much. */
    private double across(double drop) {
        return drop <= 0 ? 0 : 2 * drop / (SLOPE + Math.sqrt(SLOPE * SLOPE + 4 * bend * drop));
    }

    private double level(int line) {
        return (line + 0.5) * distance;
    }

    /** How far apart lines are, straight down. */
    public double distance() {
        return distance;
    }

    @Override
    public int size() {
        return lefts.length;
    }

    @Override
    public Spans whole(int line) {
        Spans whole = new Spans();
        whole.add(lefts[line], rights[line]);
        return whole;
    }

    @Override
    public Hatching of(Outline outline) {
        LineCrossings crossings = new LineCrossings();
        cross(Flattening.ring(outline, TOLERANCE), crossings);
        return Hatching.of(crossings, line -> lefts[line], line -> rights[line]);
    }

    /** The area of all places in the frame whose winding number {@code inside} accepts; it must refuse 0. */
    double area(LineCrossings crossings, IntPredicate inside) {
        crossings.sort();
        Spans spans = new Spans();
        double length = 0;
        for (int line = crossings.first(); line < crossings.end(); line++) {
            spans.clear();
            crossings.fill(line, inside, lefts[line], rights[line], spans);
            length += spans.length();
        }
        return length * distance;
    }

    /** Gathers where a closed walk crosses the lines. */
    void cross(Coordinate[] ring, LineCrossings crossings) {
        for (int i = 1; i < ring.length; i++) {
            cross(ring[i - 1], ring[i], crossings);
        }
    }

    /**
     * Along an edge, at the share t of it, the number of the line is {@code start + rate t + curve t²}: it rises all the
     * way, or falls to a least one and rises from there.
     */
    private void cross(Coordinate a, Coordinate b, LineCrossings crossings) {
        double start = number(a);
        double end = number(b);
        double curve = bend * (b.x - a.x) * (b.x - a.x) / distance;
        double rate = end - start - curve;
        double least = rate >= 0 ? start : rate <= -2 * curve ? end : start - rate * rate / (4 * curve);
        for (int line = above(least); line < above(start); line++) {
            double root = Math.sqrt(Math.max(0, rate * rate + 4 * curve * (line - start)));
            crossings.add(line, place(a, b, 2 * (line - start) / (rate - root)), true);
        }
        for (int line = above(least); line < above(end); line++) {
            double root = Math.sqrt(Math.max(0, rate * rate + 4 * curve * (line - start)));
            double share = rate >= 0 ? 2 * (line - start) / (rate + root) : (root - rate) / (2 * curve);
            crossings.add(line, place(a, b, share), false);
        }
    }

    private double number(Coordinate at) {
        return (at.y + drop(at.x)) / distance - 0.5;
    }

    /** The first line at a number or above it. */
    private int above(double number) {
        return (int) Math.max(0, Math.min(lefts.length, Math.ceil(number)));
    }

    private static double place(Coordinate a, Coordinate b, double share) {
        return a.x + (b.x - a.x) * Math.max(0, Math.min(1, share));
    }

    /**
     * Writes the moments of what stretches of a line stand for to six places from {@code at} on, in the order of {@link
     * Moments}.
     */
    public void measure(int line, Spans spans, double[] sums, int at) {
        double x0 = 0;
        double x1 = 0;
        double x2 = 0;
        double x3 = 0;
        double x4 = 0;
        for (int i = 0; i < spans.size(); i++) {
            double a = spans.from(i);
            double b = spans.to(i);
            double length = b - a;
            double middle = (a + b) / 2;
            double square = a * a + b * b;
            x0 += length;
            x1 += length * middle;
            x2 += length * (square + a * b) / 3;
            x3 += length * middle * square / 2;
            x4 += length * (square * square + a * b * (square - a * b)) / 5;
        }
        double level = level(line);
        double dropped = SLOPE * x1 + bend * x2;
        sums[at] = distance * x0;
        sums[at + 1] = distance * x1;
        sums[at + 2] = distance * (level * x0 - dropped);
        sums[at + 3] = distance * x2;
        sums[at + 4] = distance
                * (level * (level * x0 - 2 * dropped) + SLOPE * SLOPE * x2 + 2 * SLOPE * bend * x3 + bend * bend * x4);
        sums[at + 5] = distance * (level * x1 - SLOPE * x2 - bend * x3);
    }
}
