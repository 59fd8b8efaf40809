package umbercard.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.Noder;
import org.locationtech.jts.noding.SegmentString;

/**
 * Overlays two regions by working only where their borders come near each other: edges are noded there, and of the rest
 * whole runs are kept or dropped as they are, after one winding number for each. So a small region costs little against a
 * big one, whose {@link Border} is worked out once. Winding numbers are exact, so noding that failed shows: they are not 0
 * or 1, or edges do not close. So does noding that reached further than looked: edges were cut that the other region's border
 * does not come near, and what lies near those in turn was not there to be cut too.
 */
final class Patch {
    private static final BitSet NONE = new BitSet();

    private final Border[] borders;
    private final int[] weights;
    private final IntPredicate inside;
    private final Envelope meeting;

    /** Where a region's polygons may be changed: where the regions meet, and as far as movable edges reach beyond. */
    private final Envelope[] reach;

    private final BitSet[] near = {new BitSet(), new BitSet()};

    /** Of the near edges those that come near the other region's border: only they are expected to move. */
    private final BitSet[] movable = {new BitSet(), new BitSet()};

    /** How many near edges must come out of noding as they went in. */
    private int still;

    private final Columns[] noded = new Columns[2];
    private final List<NodedSegmentString> strings = new ArrayList<>();
    private final List<List<Coordinate[]>> runs = List.of(new ArrayList<>(), new ArrayList<>());
    private final List<Link> links = new ArrayList<>();

    /**
     * @param inside of which sums of the weights of the regions that hold a place the result consists; it must refuse 0
     * @param meeting where the regions meet, at least
     */
    Patch(Border mine, int weight, Border other, int otherWeight, IntPredicate inside, Envelope meeting) {
        borders = new Border[] {mine, other};
        weights = new int[] {weight, otherWeight};
        this.inside = inside;
        this.meeting = meeting;
        reach = new Envelope[] {new Envelope(meeting), new Envelope(meeting)};
    }

    /** The polygons of the result as {@link Overlay#fill} gives them; empty if noding is found to have failed. */
    Optional<List<Polygon>> polygons(Noder noder, double slack) {
        findMovable(0, slack);
        findMovable(1, slack);
        cut(0, slack);
        cut(1, slack);
        Optional<List<Piece>> pieces =
                Noding.cut(noder, strings).filter(this::isStill).map(Piece::of);
        if (pieces.isEmpty() || !link(pieces.get())) {
            return Optional.empty();
        }
        Rings<Link> rings = new Rings<>(links);
        return rings.simple()
                .flatMap(walks -> polygons(walks, place -> rings.meetAt(place) || isTouched(place)))
                .map(this::withTheRest);
    }

    private List<Polygon> withTheRest(List<Polygon> met) {
        List<Polygon> all = new ArrayList<>();
        for (int k = 0; k < 2; k++) {
            if (inside.test(weights[k])) {
                int region = k;
                borders[k].polygons.stream()
                        .filter(polygon -> !isInvolved(region, polygon))
                        .forEach(all::add);
            }
        }
        all.addAll(met);
        all.sort(Comparator.comparing(Polygon::getCoordinate));
        return all;
    }

    private boolean isInvolved(int k, Polygon polygon) {
        return polygon.getEnvelopeInternal().intersects(reach[k]);
    }

    /** Finds the edges of a region that come near the other region's border: rounding may move them. */
    private void findMovable(int k, double slack) {
        Nearness toOther = new Nearness(meeting, slack);
        circuits(1 - k).forEach(circuit -> toOther.mark(circuit.corners));
        circuits(k).forEach(circuit -> near(k, circuit, toOther));
        movable[k].or(near[k]);
    }

    /** Cuts a region's rings into movable edges, others that come near those, and what comes near none. */
    private void cut(int k, double slack) {
        Envelope moved = new Envelope(meeting);
        circuits(k).forEach(circuit -> expand(k, circuit, moved));
        Nearness toMoved = new Nearness(moved, slack);
        circuits(k).forEach(circuit -> mark(k, circuit, toMoved));
        reach[k].expandToInclude(moved);
        reach[k].expandBy(slack);
        circuits(k).forEach(circuit -> near(k, circuit, toMoved));
        circuits(k).forEach(circuit -> cut(k, circuit));
    }

    private Stream<Border.Circuit> circuits(int k) {
        return borders[k].circuits.stream().filter(circuit -> isInvolved(k, circuit.of));
    }

    private void expand(int k, Border.Circuit circuit, Envelope moved) {
        int end = circuit.first + circuit.corners.length - 1;
        for (int i = movable[k].nextSetBit(circuit.first); i >= 0 && i < end; i = movable[k].nextSetBit(i + 1)) {
            moved.expandToInclude(circuit.corners[i - circuit.first]);
            moved.expandToInclude(circuit.corners[i - circuit.first + 1]);
        }
    }

    private void near(int k, Border.Circuit circuit, Nearness others) {
        for (int i = 1; i < circuit.corners.length; i++) {
            if (others.isNear(circuit.corners[i - 1], circuit.corners[i])) {
                near[k].set(circuit.first + i - 1);
            }
        }
    }

    private void mark(int k, Border.Circuit circuit, Nearness moved) {
        for (int i = 1; i < circuit.corners.length; i++) {
            if (near[k].get(circuit.first + i - 1)) {
                moved.mark(circuit.corners[i - 1], circuit.corners[i]);
            }
        }
    }

    private void cut(int k, Border.Circuit circuit) {
        Coordinate[] ring = circuit.corners;
        int edges = ring.length - 1;
        int start = 0;
        while (start < edges && !breaks(k, circuit, start)) {
            start++;
        }
        start %= edges;
        int from = start;
        for (int i = start + 1; i <= start + edges; i++) {
            if (i == start + edges || breaks(k, circuit, i % edges)) {
                take(k, part(ring, from, i), circuit.first + from % edges);
                from = i;
            }
        }
    }

    /** Whether a run ends at a corner: near edges meet far ones there, movable ones still ones, or far ones meet others. */
    private boolean breaks(int k, Border.Circuit circuit, int corner) {
        int edges = circuit.corners.length - 1;
        boolean after = near[k].get(circuit.first + corner);
        boolean before = near[k].get(circuit.first + (corner + edges - 1) % edges);
        boolean movableAfter = movable[k].get(circuit.first + corner);
        boolean movableBefore = movable[k].get(circuit.first + (corner + edges - 1) % edges);
        return before != after
                || movableBefore != movableAfter
                || (!after && borders[k].touches.contains(circuit.corners[corner]));
    }

    private static Coordinate[] part(Coordinate[] ring, int from, int to) {
        int edges = ring.length - 1;
        if (to <= edges) {
            return Arrays.copyOfRange(ring, from, to + 1);
        }
        Coordinate[] part = new Coordinate[to - from + 1];
        for (int i = from; i <= to; i++) {
            part[i - from] = ring[i % edges];
        }
        return part;
    }

    private void take(int k, Coordinate[] run, int edge) {
        if (movable[k].get(edge)) {
            strings.add(new NodedSegmentString(run, k));
        } else if (near[k].get(edge)) {
            strings.add(new NodedSegmentString(run, k | Piece.STILL));
            still += run.length - 1;
        } else {
            runs.get(k).add(run);
        }
    }

    private boolean isStill(List<SegmentString> cut) {
        return still
                == cut.stream()
                        .filter(string -> ((Integer) string.getData() & Piece.STILL) != 0)
                        .mapToInt(string -> string.size() - 1)
                        .sum();
    }

    /** Gathers the links of the result's border. */
    private boolean link(List<Piece> pieces) {
        for (int k = 0; k < 2; k++) {
            int region = k;
            List<Piece> along =
                    pieces.stream().filter(piece -> piece.turns[region] != 0).toList();
            noded[k] = new Columns(
                    along.stream()
                            .map(p -> p.turns[region] > 0 ? p.left : p.right)
                            .toArray(Coordinate[]::new),
                    along.stream()
                            .map(p -> p.turns[region] > 0 ? p.right : p.left)
                            .toArray(Coordinate[]::new));
        }
        return pieces.stream().allMatch(this::link)
                && runs.get(0).stream().allMatch(run -> link(run, 0))
                && runs.get(1).stream().allMatch(run -> link(run, 1));
    }

    private boolean link(Piece piece) {
        int above = 0;
        int below = 0;
        for (int k = 0; k < 2; k++) {
            int turns = piece.turns[k];
            int under = turns == 0 ? winding(k, piece.middle()) : (1 - turns) / 2;
            if (turns < -1 || turns > 1 || under < 0 || under > 1) {
                return false;
            }
            below += weights[k] * under;
            above += weights[k] * (under + turns);
        }
        add(new Coordinate[] {piece.left, piece.right}, above, below);
        return true;
    }

    private boolean link(Coordinate[] run, int k) {
        int other = winding(1 - k, Piece.middle(run[0], run[1]));
        add(run, weights[k] + other * weights[1 - k], other * weights[1 - k]);
        return other == 0 || other == 1;
    }

    private void add(Coordinate[] run, int leftHand, int rightHand) {
        if (inside.test(leftHand) != inside.test(rightHand)) {
            links.add(inside.test(leftHand) ? Link.along(run) : Link.against(run));
        }
    }

    private int winding(int k, Coordinate at) {
        return borders[k].columns.winding(at, near[k]) + noded[k].winding(at, NONE);
    }

    /** Whether what takes no part here may touch a place. */
    private boolean isTouched(Coordinate place) {
        return borders[0].touches.contains(place) || borders[1].touches.contains(place);
    }

    private static Optional<List<Polygon>> polygons(List<List<Link>> rings, Predicate<Coordinate> touched) {
        Holes holes = new Holes();
        for (List<Link> ring : rings) {
            List<Coordinate> corners = new ArrayList<>();
            ring.forEach(link -> corners.addAll(link.corners.subList(0, link.corners.size() - 1)));
            Coordinate[] closed = Ring.closed(corners, touched);
            if (closed.length == 0) {
                return Optional.empty();
            }
            holes.add(closed);
        }
        return holes.polygons();
    }
}
