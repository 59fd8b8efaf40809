package umbercard.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.noding.SegmentString;

/** An edge between nodes of two regions, and which way and how often the borders of both run along it. */
final class Piece {
    /** Marks strings of edges that must not be cut, beside the number of their region, 0 or 1. */
    static final int STILL = 2;

    final Coordinate left;
    final Coordinate right;
    final int[] turns = new int[2];

    private Piece(Coordinate left, Coordinate right) {
        this.left = left;
        this.right = right;
    }

    Coordinate middle() {
        return middle(left, right);
    }

    /** Exact: the grid's halves are doubles too. */
    static Coordinate middle(Coordinate a, Coordinate b) {
        return new Coordinate((a.x + b.x) / 2, (a.y + b.y) / 2);
    }

    /** One piece for all edges between the same two nodes. */
    static List<Piece> of(List<SegmentString> cut) {
        List<Piece> single = new ArrayList<>();
        for (SegmentString string : cut) {
            int k = (Integer) string.getData() & ~STILL;
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
}
