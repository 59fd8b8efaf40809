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
final class Rings<W extends Way> {
    private final Map<Coordinate, List<W>> leaving = new HashMap<>();

    private final List<W> border;

    Rings(List<W> border) {
        this.border = border;
        for (W way : border) {
            leaving.computeIfAbsent(way.from(), place -> new ArrayList<>(1)).add(way);
        }
    }

    /**
     * The outer rings, each with its holes, in the order of their least coordinates; pieces that touch in a point are two.
     *
     * @return empty if the edges do not close, because noding failed
     */
    static Optional<List<Ring>> of(List<Edge> border) {
        Rings<Edge> rings = new Rings<>(border);
        return rings.simple()
                .flatMap(walks -> sorted(new ArrayList<>(walks.stream()
                        .map(walk -> new Ring(walk, rings::meetAt))
                        .toList())));
    }

    /**
     * The border as rings that do not touch themselves; pieces that touch in a point are apart.
     *
     * @return empty if the ways do not close, because noding failed
     */
    Optional<List<List<W>>> simple() {
        List<List<W>> rings = new ArrayList<>();
        Set<W> walked = new HashSet<>();
        for (W start : border) {
            if (!walked.contains(start)) {
                Optional<List<W>> walk = walk(start, walked);
                if (walk.isEmpty()) {
                    return Optional.empty();
                }
                cut(walk.get(), rings);
            }
        }
        return Optional.of(rings);
    }

    /** Whether the border passes a place more than once. */
    boolean meetAt(Coordinate place) {
        return leaving.getOrDefault(place, List.of()).size() > 1;
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

    private Optional<List<W>> walk(W start, Set<W> walked) {
        List<W> walk = new ArrayList<>();
        W edge = start;
        do {
            if (edge == null || !walked.add(edge)) {
                return Optional.empty();
            }
            walk.add(edge);
            edge = next(edge);
        } while (edge != start);
        return Optional.of(walk);
    }

    /** The next edge of the same piece: the sharpest turn to the left hand. */
    @Nullable
    private W next(W edge) {
        List<W> choice = leaving.getOrDefault(edge.to(), List.of());
        if (choice.size() < 2) {
            return choice.isEmpty() ? null : choice.get(0);
        }
        W best = null;
        for (W candidate : choice) {
            if (best == null || isBetter(edge, candidate, best)) {
                best = candidate;
            }
        }
        return best;
    }

    /** Whether one meets {@code candidate} before {@code best}, turning clockwise from the way one came. */
    private static boolean isBetter(Way arriving, Way candidate, Way best) {
        Coordinate at = arriving.to();
        boolean candidateFirst = PolygonNodeTopology.compareAngle(at, candidate.ahead(), arriving.behind()) <= 0;
        boolean bestFirst = PolygonNodeTopology.compareAngle(at, best.ahead(), arriving.behind()) <= 0;
        if (candidateFirst != bestFirst) {
            return candidateFirst;
        }
        return PolygonNodeTopology.compareAngle(at, candidate.ahead(), best.ahead()) > 0;
    }

    /** Cuts a walk that touches itself into simple rings. */
    private static <W extends Way> void cut(List<W> walk, List<List<W>> rings) {
        List<W> open = new ArrayList<>();
        Map<Coordinate, Integer> starts = new HashMap<>();
        for (W edge : walk) {
            starts.put(edge.from(), open.size());
            open.add(edge);
            Integer start = starts.get(edge.to());
            if (start != null) {
                List<W> closed = open.subList(start, open.size());
                rings.add(List.copyOf(closed));
                closed.forEach(done -> starts.remove(done.from()));
                closed.clear();
            }
        }
    }
}
