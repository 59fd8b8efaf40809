package umbercard.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;

/** A simple closed walk along border edges with the result on the left hand: an outer border or that of a hole. */
final class Ring {
    private final List<Edge> edges;

    /** The lower of the two edges at the least coordinate. */
    private final Edge first;

    final List<Ring> holes = new ArrayList<>();

    @Nullable
    private Ring outer;

    private final Predicate<Coordinate> touched;

    /** @param touched tells where the border passes more than once */
    Ring(List<Edge> walk, Predicate<Coordinate> touched) {
        this.touched = touched;
        edges = List.copyOf(walk);
        Edge least = edges.get(0);
        for (Edge edge : edges) {
            int order = edge.left.compareTo(least.left);
            if (order < 0 || (order == 0 && Edge.byHeight(edge, least) < 0)) {
                least = edge;
            }
        }
        first = least;
        for (Edge edge : edges) {
            edge.ring = this;
        }
    }

    boolean isHole() {
        return !first.insideAbove;
    }

    static Comparator<Ring> fromLeft() {
        return Comparator.comparing((Ring ring) -> ring.first.left).thenComparing(ring -> ring.first, Edge::byHeight);
    }

    /**
     * The outer border of the piece that this ring bounds. What lies next below a hole bounds the same piece: its outer
     * border, or another of its holes.
     */
    @Nullable
    Ring outer() {
        if (!isHole()) {
            return this;
        }
        if (outer == null && first.support != null && first.support.ring != null) {
            outer = first.support.ring.outer();
        }
        return outer;
    }

    /** The closed ring of coordinates, without points in the middle of a straight run. */
    Coordinate[] coordinates() {
        return closed(edges.stream().map(Edge::from).toList(), touched);
    }

    /**
     * The corners from the least on, and that again at the end, without those in the middle of a straight run, but for
     * touched ones: another overlay would not find the touch in the middle of an edge. Nothing if they enclose nothing.
     */
    static Coordinate[] closed(List<Coordinate> corners, Predicate<Coordinate> touched) {
        List<Coordinate> kept = new ArrayList<>(corners.size() + 1);
        Coordinate before = corners.get(corners.size() - 1);
        for (int i = 0; i < corners.size(); i++) {
            Coordinate at = corners.get(i);
            if (Orientation.index(before, at, corners.get((i + 1) % corners.size())) != Orientation.COLLINEAR
                    || touched.test(at)) {
                kept.add(at);
                before = at;
            }
        }
        if (kept.size() < 3) {
            return new Coordinate[0];
        }
        Collections.rotate(kept, -kept.indexOf(Collections.min(kept)));
        kept.add(kept.get(0));
        return kept.toArray(new Coordinate[0]);
    }
}
