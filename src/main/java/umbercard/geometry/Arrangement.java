package umbercard.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.Noder;
import org.locationtech.jts.noding.SegmentString;

/**
 * The edges of closed walks, cut wherever they meet on a grid (snap rounding: Hobby 1999, "Practical segment intersection
 * with finite precision output"), and the winding number on both sides of each by one sweep (Bentley and Ottmann 1979, on
 * edges that no longer cross). Walks that turn back on themselves cancel, so spikes and zero areas leave nothing.
 */
final class Arrangement {
    private final List<Edge> edges;

    /** @param edges each pair of places joined by one at most, meeting at ends only */
    Arrangement(List<Edge> edges) {
        this.edges = edges;
    }

    /** Gathers closed walks and cuts them where they meet. */
    static final class Builder {
        private final Noder noder;
        private final List<NodedSegmentString> strings = new ArrayList<>();
        private final List<Edge> edges = new ArrayList<>();

        Builder(Noder noder) {
            this.noder = noder;
        }

        /** Adds a closed walk. */
        void add(Coordinate[] ring, int weight) {
            strings.add(new NodedSegmentString(ring.clone(), weight));
        }

        private void edge(Coordinate from, Coordinate to, int weight) {
            int order = from.compareTo(to);
            if (order < 0) {
                edges.add(new Edge(from, to, weight));
            } else if (order > 0) {
                edges.add(new Edge(to, from, -weight));
            }
        }

        /** Cuts the walks; empty if the noder finds that it failed. */
        Optional<Arrangement> noded() {
            return Noding.cut(noder, strings).map(this::arranged);
        }

        private Arrangement arranged(List<SegmentString> pieces) {
            for (SegmentString string : pieces) {
                int weight = (Integer) string.getData();
                for (int i = 1; i < string.size(); i++) {
                    edge(string.getCoordinate(i - 1), string.getCoordinate(i), weight);
                }
            }
            return new Arrangement(merged(edges));
        }
    }

    /** One edge for all that join the same two places; none where the walks there and back cancel. */
    private static List<Edge> merged(List<Edge> single) {
        single.sort(Comparator.comparing((Edge edge) -> edge.left).thenComparing(edge -> edge.right));
        List<Edge> merged = new ArrayList<>(single.size());
        int i = 0;
        while (i < single.size()) {
            Edge edge = single.get(i);
            int weight = 0;
            for (; i < single.size() && same(edge, single.get(i)); i++) {
                weight += single.get(i).weight;
            }
            if (weight != 0) {
                merged.add(weight == edge.weight ? edge : new Edge(edge.left, edge.right, weight));
            }
        }
        return merged;
    }

    private static boolean same(Edge one, Edge two) {
        return one.left.equals2D(two.left) && one.right.equals2D(two.right);
    }

    /**
     * Sweeps once and marks the border of the set of places whose winding number {@code inside} accepts; it must refuse 0.
     *
     * @return the border edges, in no order; empty if the edges turn out to cross, because noding failed
     */
    Optional<List<Edge>> border(IntPredicate inside) {
        List<Edge> starts = new ArrayList<>(edges);
        starts.sort(Comparator.comparing((Edge edge) -> edge.left).thenComparing(Edge::byHeight));
        List<Edge> ends = new ArrayList<>(edges);
        ends.sort(Comparator.comparing((Edge edge) -> edge.right));
        NavigableSet<Edge> crossed = new TreeSet<>(Edge::byHeight);
        List<Edge> border = new ArrayList<>();
        int end = 0;
        for (Edge edge : starts) {
            for (; ends.get(end).right.compareTo(edge.left) <= 0; end++) {
                if (!crossed.remove(ends.get(end))) {
                    return Optional.empty();
                }
            }
            Edge under = crossed.lower(edge);
            edge.below = under == null ? 0 : under.above;
            edge.above = edge.below + edge.weight;
            edge.insideAbove = inside.test(edge.above);
            edge.border = edge.insideAbove != inside.test(edge.below);
            if (edge.border) {
                edge.support = under == null || under.border ? under : borderBelow(crossed, under);
                border.add(edge);
            }
            if (!crossed.add(edge)) {
                return Optional.empty();
            }
        }
        return Optional.of(border);
    }

    @Nullable
    private static Edge borderBelow(NavigableSet<Edge> crossed, Edge from) {
        Edge under = from;
        while (under != null && !under.border) {
            under = crossed.lower(under);
        }
        return under;
    }
}
