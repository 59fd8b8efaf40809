package umbercard.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.PrecisionModel;

/**
 * Fills weighted closed walks by level terraces, for when noding has failed on every grid: the plane is cut into rows, and
 * what the rule accepts along the middle of each fills the row's whole height. Nothing is noded, so nothing can fail: all
 * edges are level or upright and meet at corners only.
 *
 * <p>Corners of walks lie between rows as far as the rows go round, and between them the middle of a row gives a straight
 * edge's area exactly; so an area is off only where edges cross or turn within a row, there by about the square of its
 * height.
 */
final class Terraces {
    private static final PrecisionModel GRID = Grid.FINE_TO_COARSE.get(0);

    /** Rows are as many as bring the tests of edges against rows to about this, within the two bounds below. */
    private static final int TESTS = 1 << 22;

    private static final int FEWEST_ROWS = 64;
    private static final int MOST_ROWS = 4096;

    private final List<Side> sides = new ArrayList<>();

    /** One edge of a walk; downward ones count their weight, upward ones take it away. */
    private record Side(Coordinate from, Coordinate to, int weight) {}

    /** Where a row's middle is crossed from left to right, and what the winding number gains there. */
    private record Crossing(double x, int gain) {}

    /** Adds a closed walk: the last coordinate equals the first. */
    void add(Coordinate[] ring, int weight) {
        for (int i = 1; i < ring.length; i++) {
            if (ring[i - 1].y < ring[i].y) {
                sides.add(new Side(ring[i - 1], ring[i], -weight));
            } else if (ring[i - 1].y > ring[i].y) {
                sides.add(new Side(ring[i], ring[i - 1], weight));
            }
        }
    }

    /** The edges round all places whose winding number {@code inside} accepts; it must refuse 0. They meet at ends only. */
    List<Edge> edges(IntPredicate inside) {
        List<Edge> edges = new ArrayList<>();
        double[] heights = heights();
        double[] below = {};
        for (int row = 1; row < heights.length; row++) {
            double[] ends = ends((heights[row - 1] + heights[row]) / 2, inside);
            addLevel(below, ends, heights[row - 1], edges);
            for (int i = 0; i < ends.length; i++) {
                Coordinate low = new Coordinate(ends[i], heights[row - 1]);
                edges.add(new Edge(low, new Coordinate(ends[i], heights[row]), i % 2 == 0 ? -1 : 1));
            }
            below = ends;
        }
        if (heights.length > 0) {
            addLevel(below, new double[0], heights[heights.length - 1], edges);
        }
        return edges;
    }

    /** The bounds of the rows: corners of the walks, and equal steps between them while there are few. */
    private double[] heights() {
        SortedSet<Double> corners = new TreeSet<>();
        for (Side side : sides) {
            corners.add(GRID.makePrecise(side.from.y));
            corners.add(GRID.makePrecise(side.to.y));
        }
        List<Double> all = List.copyOf(corners);
        int rows = Math.max(FEWEST_ROWS, Math.min(MOST_ROWS, TESTS / Math.max(1, sides.size())));
        int stride = 1 + all.size() / rows;
        int steps = Math.max(1, rows / Math.max(1, all.size()));
        SortedSet<Double> heights = new TreeSet<>();
        for (int i = 0; i < all.size(); i += stride) {
            double from = all.get(i);
            double to = all.get(Math.min(i + stride, all.size() - 1));
            for (int step = 0; step <= steps; step++) {
                heights.add(GRID.makePrecise(from + (to - from) * step / steps));
            }
        }
        return heights.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Where the accepted parts of a level line begin and end, in turn, on the grid and rising. */
    private double[] ends(double y, IntPredicate inside) {
        List<Crossing> crossings = new ArrayList<>();
        for (Side side : sides) {
            if (side.from.y <= y && y < side.to.y) {
                double share = (y - side.from.y) / (side.to.y - side.from.y);
                double x = side.from.x + share * (side.to.x - side.from.x);
                crossings.add(new Crossing(GRID.makePrecise(x), side.weight));
            }
        }
        crossings.sort(Comparator.comparingDouble(Crossing::x));
        double[] ends = new double[crossings.size()];
        int count = 0;
        int winding = 0;
        for (Crossing crossing : crossings) {
            boolean before = inside.test(winding);
            winding += crossing.gain;
            if (before == inside.test(winding)) {
                continue;
            }
            if (count > 0 && ends[count - 1] == crossing.x) {
                count--;
            } else {
                ends[count++] = crossing.x;
            }
        }
        return Arrays.copyOf(ends, count);
    }

    /** Adds the level edges between two rows, cut at the ends of both: the parts that lie in one of them only. */
    private static void addLevel(double[] below, double[] above, double y, List<Edge> edges) {
        int b = 0;
        int a = 0;
        double from = 0;
        while (b < below.length || a < above.length) {
            double to = Math.min(
                    b < below.length ? below[b] : Double.POSITIVE_INFINITY,
                    a < above.length ? above[a] : Double.POSITIVE_INFINITY);
            if (b % 2 != a % 2) {
                edges.add(new Edge(new Coordinate(from, y), new Coordinate(to, y), a % 2 - b % 2));
            }
            b += b < below.length && below[b] == to ? 1 : 0;
            a += a < above.length && above[a] == to ? 1 : 0;
            from = to;
        }
    }
}
