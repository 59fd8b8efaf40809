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
 * or 1, or edges do not close.
 */
final class Patch {
    private static final BitSet NONE = new BitSet();

    private final Border[] borders;
    private final int[] weights;
    private final IntPredicate inside;
    private final Envelope meeting;
    private final BitSet[] near = {new BitSet(), new BitSet()};
    private final Columns[] noded = new Columns[2];
    private final List<NodedSegmentString> strings = new ArrayList<>();
    private final List<List<Coordinate[]>> runs = List.of(new ArrayList<>(), new ArrayList<>());
    private final List<Link> links = new ArrayList<>();

    /** An edge between nodes, and which way and how often the borders of both regions run along it. */
    private static final class Piece {
        final Coordinate left;
        final Coordinate right;
        final int[] turns = new int[2];

        Piece(Coordinate left, Coordinate right) {
            this.left = left;
            this.right = right;
        }

        Coordinate middle() {
            return Patch.middle(left, right);
        }
    }

    /**
     * @param inside of which sums of the weights of the regions that hold a place the result consists; it must refuse 0
     * @param meeting where the regions meet, at least
     */
    Patch(Border mine, int weight, Border other, int otherWeight, IntPredicate inside, Envelope meeting) {
        borders = new Border[] {mine, other};
        weights = new int[] {weight, otherWeight};
        this.inside = inside;
        this.meeting = meeting;
    }

    /** The polygons of the result as {@link Overlay#fill} gives them; empty if noding is found to have failed. */
    Optional<List<Polygon>> polygons(Noder noder, double slack) {
        for (int k = 0; k < 2; k++) {
            cut(k, slack);
        }
        Optional<List<Piece>> pieces = Noding.cut(noder, strings).map(Patch::pieces);
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
                borders[k].polygons.stream()
                        .filter(polygon -> !isInvolved(polygon))
                        .forEach(all::add);
            }
        }
        all.addAll(met);
        all.sort(Comparator.comparing(Polygon::getCoordinate));
        return all;
    }

    private boolean isInvolved(Polygon polygon) {
        return polygon.getEnvelopeInternal().intersects(meeting);
    }

    /**
     * Cuts a region's rings into what comes near the other region's border, with what comes near those edges in turn, for
     * rounding may move them, and what does not.
     */
    private void cut(int k, double slack) {
        Nearness toOther = new Nearness(meeting, slack);
        circuits(1 - k).forEach(circuit -> toOther.mark(circuit.corners));
        Nearness toMoved = new Nearness(meeting, slack);
        circuits(k).forEach(circuit -> near(k, circuit, toOther));
        circuits(k).forEach(circuit -> mark(k, circuit, toMoved));
        circuits(k).forEach(circuit -> near(k, circuit, toMoved));
        circuits(k).forEach(circuit -> cut(k, circuit));
    }

    private Stream<Border.Circuit> circuits(int k) {
        return borders[k].circuits.stream().filter(circuit -> isInvolved(circuit.of));
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
                take(k, part(ring, from, i), near[k].get(circuit.first + from % edges));
                from = i;
            }
        }
    }

    /** Whether a run ends at a corner: near edges meet far ones there, or far ones meet others. */
    private boolean breaks(int k, Border.Circuit circuit, int corner) {
        int edges = circuit.corners.length - 1;
        boolean after = near[k].get(circuit.first + corner);
        boolean before = near[k].get(circuit.first + (corner + edges - 1) % edges);
        return before != after || (!after && borders[k].touches.contains(circuit.corners[corner]));
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

    private void take(int k, Coordinate[] run, boolean isNear) {
        if (isNear) {
            strings.add(new NodedSegmentString(run, k));
        } else {
            runs.get(k).add(run);
        }
    }

    /** One piece for all edges between the same two nodes. */
    private static List<Piece> pieces(List<SegmentString> cut) {
        List<Piece> single = new ArrayList<>();
        for (SegmentString string : cut) {
            int k = (Integer) string.getData();
            for (int i = 1; i < string.size(); i++) {
                Coordinate from = string.getCoordinate(i - 1);
                Coordinate to = string.getCoordinate(i);
                int order = to.compareTo(from);
                if (order != 0) {
                    Piece piece = order > 0 ? new Piece(from, to) : new Piece(to, from);
                    piece.turns[k] = order;
                    single.add(piece);
                }
            }
        }
        single.sort(Comparator.comparing((Piece piece) -> piece.left).thenComparing(piece -> piece.right));
        List<Piece> merged = new ArrayList<>();
        for (Piece piece : single) {
            Piece last = merged.isEmpty() ? piece : merged.get(merged.size() - 1);
            if (last != piece && last.left.equals2D(piece.left) && last.right.equals2D(piece.right)) {
                last.turns[0] += piece.turns[0];
                last.turns[1] += piece.turns[1];
            } else {
                merged.add(piece);
            }
        }
        return merged;
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
        int other = winding(1 - k, middle(run[0], run[1]));
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

    /** Exact: the grid's halves are doubles too. */
    private static Coordinate middle(Coordinate a, Coordinate b) {
        return new Coordinate((a.x + b.x) / 2, (a.y + b.y) / 2);
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
