package umbercard.geometry;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;

/**
 * Edges sorted into upright columns, so that winding numbers are found by a ray that meets few of them. Exact for places
 * that lie on none of the edges.
 */
final class Columns {
    private static final int MOST = 4096;

    private final Coordinate[] starts;
    private final Coordinate[] ends;
    private final double left;
    private final double width;
    private final int count;

    /** The edges of column c are {@code members[first[c]]} to {@code members[first[c + 1] - 1]}. */
    private final int[] first;

    private final int[] members;

    /** The edges of closed rings, numbered in order. */
    static Columns ofRings(List<Coordinate[]> rings) {
        int n = rings.stream().mapToInt(ring -> ring.length - 1).sum();
        Coordinate[] starts = new Coordinate[n];
        Coordinate[] ends = new Coordinate[n];
        int at = 0;
        for (Coordinate[] ring : rings) {
            System.arraycopy(ring, 0, starts, at, ring.length - 1);
            System.arraycopy(ring, 1, ends, at, ring.length - 1);
            at += ring.length - 1;
        }
        return new Columns(starts, ends);
    }

    /** Edges from each start to the end of the same number. */
    Columns(Coordinate[] starts, Coordinate[] ends) {
        this.starts = starts;
        this.ends = ends;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        double all = 0;
        for (int i = 0; i < starts.length; i++) {
            least = Math.min(least, Math.min(starts[i].x, ends[i].x));
            most = Math.max(most, Math.max(starts[i].x, ends[i].x));
            all += Math.abs(starts[i].x - ends[i].x);
        }
        left = least;
        width = Math.max(most - least, Double.MIN_NORMAL);
        // An edge falls into one column, and one more for each border it crosses: at most three an edge on the mean.
        double wide = all > 0 ? 2 * starts.length * width / all : MOST;
        count = (int) Math.max(1, Math.min(Math.min(MOST, starts.length), wide));
        first = new int[count + 1];
        members = members();
    }

    private int[] members() {
        int[] sizes = new int[count + 1];
        for (int i = 0; i < starts.length; i++) {
            for (int c = leftColumn(i); c <= rightColumn(i); c++) {
                sizes[c + 1]++;
            }
        }
        Arrays.parallelPrefix(sizes, Integer::sum);
        System.arraycopy(sizes, 0, first, 0, sizes.length);
        int[] all = new int[sizes[count]];
        for (int i = 0; i < starts.length; i++) {
            for (int c = leftColumn(i); c <= rightColumn(i); c++) {
                all[sizes[c]++] = i;
            }
        }
        return all;
    }

    private int leftColumn(int edge) {
        return column(Math.min(starts[edge].x, ends[edge].x));
    }

    private int rightColumn(int edge) {
        return column(Math.max(starts[edge].x, ends[edge].x));
    }

    private int column(double x) {
        return (int) Math.max(0, Math.min(count - 1, Math.floor((x - left) / width * count)));
    }

    /** How often the edges, those left out aside, go round a place: counter-clockwise where y runs up. */
    int winding(Coordinate at, BitSet leftOut) {
        if (starts.length == 0 || at.x < left || at.x > left + width) {
            return 0;
        }
        int winding = 0;
        int c = column(at.x);
        for (int m = first[c]; m < first[c + 1]; m++) {
            int i = members[m];
            Coordinate a = starts[i];
            Coordinate b = ends[i];
            if (a.x <= at.x != b.x <= at.x && !leftOut.get(i) && isBelow(a, b, at)) {
                winding += a.x <= at.x ? 1 : -1;
            }
        }
        return winding;
    }

    private static boolean isBelow(Coordinate a, Coordinate b, Coordinate at) {
        if (a.y < at.y == b.y < at.y && a.y != at.y && b.y != at.y) {
            return a.y < at.y;
        }
        return Orientation.index(a, b, at) == (a.x < b.x ? Orientation.LEFT : Orientation.RIGHT);
    }
}
