package umbercard.geometry;

import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;

/**
 * An edge of a noded arrangement: it meets others at its ends only. {@code left} comes before {@code right} in the order
 * of x, then y; "above" is to the left hand of one who walks from left to right.
 */
final class Edge implements Way {
    final Coordinate left;
    final Coordinate right;

    /** Walks from left to right less walks from right to left. */
    final int weight;

    /** Winding numbers on both sides; set by the sweep. */
    int below;

    int above;

    /** Whether the result's border runs along this edge, and on which side of it the result lies. */
    boolean border;

    boolean insideAbove;

    /** The border edge next below the left end, if any. */
    @Nullable
    Edge support;

    @Nullable
    Ring ring;

    Edge(Coordinate left, Coordinate right, int weight) {
        this.left = left;
        this.right = right;
        this.weight = weight;
    }

    @Override
    public Coordinate ahead() {
        return to();
    }

    @Override
    public Coordinate behind() {
        return from();
    }

    /** Where a walk that keeps the result on its left hand begins. */
    @Override
    public Coordinate from() {
        return insideAbove ? left : right;
    }

    /** Where a walk that keeps the result on its left hand ends. */
    @Override
    public Coordinate to() {
        return insideAbove ? right : left;
    }

    /** Order from below to above of two edges that one sweep line crosses; by exact orientation. */
    static int byHeight(Edge one, Edge two) {
        if (one == two) {
            return 0;
        }
        int order = one.left.compareTo(two.left);
        if (order > 0) {
            return -byHeight(two, one);
        }
        int side = order == 0 ? 0 : Orientation.index(one.left, one.right, two.left);
        if (side == 0) {
            side = Orientation.index(one.left, one.right, two.right);
        }
        return side != 0 ? -side : one.right.compareTo(two.right);
    }
}
