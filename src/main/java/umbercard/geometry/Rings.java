package umbercard.geometry;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.PolygonNodeTopology;
import org.locationtech.jts.geom.Coordinate;

/** Strings border edges to outer rings with their holes. */
final class Rings {
    private final Map<Coordinate, List<Edge>> leaving = new HashMap<>();

    private Rings(List<Edge> border) {
        for (Edge edge : border) {
            leaving.computeIfAbsent(edge.from(), place -> new ArrayList<>(1)).add(edge);
        }
    }

    /**
     * The outer rings, each with its holes, in the order of their least coordinates; pieces that touch in a point are two.
     *
     * @return empty if the edges do not close, because noding failed
     */
    static Optional<List<Ring>> of(List<Edge> border) {
        return new Rings(border).walkAll(border).flatMap(Rings::sorted);
    }

    private static Optional<List<Ring>> sorted(List<Ring> all) {
        all.sort(Ring.fromLeft());
        List<Ring> outers = new ArrayList<>();
        for (Ring ring : all) {
            Ring outer = ring.outer();
            if (outer == null) {
                return Optional.empty();
            }
            if (ring == outer) {
                outers.add(ring);
            } else {
                outer.holes.add(ring);
            }
        }
        return Optional.of(outers);
    }

    private Optional<List<Ring>> walkAll(List<Edge> border) {
        List<Ring> rings = new ArrayList<>();
        Set<Edge> walked = new HashSet<>();
        for (Edge start : border) {
            if (walked.contains(start)) {
                continue;
            }
            List<Edge> walk = new ArrayList<>();
            Edge edge = start;
            do {
                if (edge == null || !walked.add(edge)) {
                    return Optional.empty();
                }
                walk.add(edge);
                edge = next(edge);
            } while (edge != start);
            cut(walk, rings);
        }
        return Optional.of(rings);
    }

    /** The next edge of the same piece: the sharpest turn to the left hand. */
    @Nullable
    private Edge next(Edge edge) {
        List<Edge> choice = leaving.getOrDefault(edge.to(), List.of());
        if (choice.size() < 2) {
            return choice.isEmpty() ? null : choice.get(0);
        }
        Edge best = null;
        for (Edge candidate : choice) {
            if (best == null || isBetter(edge, candidate, best)) {
                best = candidate;
            }
        }
        return best;
    }

    /** Whether one meets {@code candidate} before {@code best}, turning clockwise from the way one came. */
    private static boolean isBetter(Edge arriving, Edge candidate, Edge best) {
        Coordinate at = arriving.to();
        boolean candidateFirst = PolygonNodeTopology.compareAngle(at, candidate.to(), arriving.from()) <= 0;
        boolean bestFirst = PolygonNodeTopology.compareAngle(at, best.to(), arriving.from()) <= 0;
        if (candidateFirst != bestFirst) {
            return candidateFirst;
        }
        return PolygonNodeTopology.compareAngle(at, candidate.to(), best.to()) > 0;
    }

    /** Cuts a walk that touches itself into simple rings. */
    private static void cut(List<Edge> walk, List<Ring> rings) {
        List<Edge> open = new ArrayList<>();
        Map<Coordinate, Integer> starts = new HashMap<>();
        for (Edge edge : walk) {
            starts.put(edge.from(), open.size());
            open.add(edge);
            Integer start = starts.get(edge.to());
            if (start != null) {
                List<Edge> closed = open.subList(start, open.size());
                rings.add(new Ring(closed));
                closed.forEach(done -> starts.remove(done.from()));
                closed.clear();
            }
        }
    }
}
