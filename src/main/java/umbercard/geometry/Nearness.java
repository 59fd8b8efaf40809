package umbercard.geometry;

import java.util.BitSet;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/**
 * Cells that some edges pass near, so that edges clear of all of them need not be tried one against the other. Errs on the
 * near side only.
 */
final class Nearness {
    private static final int CELLS = 256;

    private final Envelope where;
    private final double slack;
    private final BitSet near = new BitSet(CELLS * CELLS);

    /** @param where only edges that come within {@code slack} of this are near anything */
    Nearness(Envelope where, double slack) {
        this.where = new Envelope(where);
        this.where.expandBy(2 * slack);
        this.slack = slack;
    }

    /** Marks the cells that a ring's edges pass near. */
    void mark(Coordinate[] ring) {
        for (int i = 1; i < ring.length; i++) {
            mark(ring[i - 1], ring[i]);
        }
    }

    /** Marks the cells that an edge passes near. */
    void mark(Coordinate from, Coordinate to) {
        if (where.intersects(from, to)) {
            int right = right(from, to);
            int left = left(from, to);
            int bottom = bottom(from, to);
            for (int row = top(from, to); row <= bottom; row++) {
                near.set(row * CELLS + left, row * CELLS + right + 1);
            }
        }
    }

    /** Whether an edge comes near a marked one. */
    boolean isNear(Coordinate from, Coordinate to) {
        if (!where.intersects(from, to)) {
            return false;
        }
        int left = left(from, to);
        int right = right(from, to);
        int bottom = bottom(from, to);
        for (int row = top(from, to); row <= bottom; row++) {
            int next = near.nextSetBit(row * CELLS + left);
            if (next >= 0 && next <= row * CELLS + right) {
                return true;
            }
        }
        return false;
    }

    private int left(Coordinate from, Coordinate to) {
        return cell(Math.min(from.x, to.x) - slack, where.getMinX(), where.getWidth());
    }

    private int right(Coordinate from, Coordinate to) {
        return cell(Math.max(from.x, to.x) + slack, where.getMinX(), where.getWidth());
    }

    private int top(Coordinate from, Coordinate to) {
        return cell(Math.min(from.y, to.y) - slack, where.getMinY(), where.getHeight());
    }

    private int bottom(Coordinate from, Coordinate to) {
        return cell(Math.max(from.y, to.y) + slack, where.getMinY(), where.getHeight());
    }

    private static int cell(double at, double from, double length) {
        return (int) Math.max(0, Math.min(CELLS - 1, Math.floor((at - from) / length * CELLS)));
    }
}
