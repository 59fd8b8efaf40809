package umbercard.desk.instruments;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import umbercard.geometry.Cubic;
import umbercard.geometry.Node;
import umbercard.geometry.Path;
import umbercard.geometry.Point;
import umbercard.model.Mark;

/**
 * A half-made outline: corners set by clicks and lines drawn freehand, in order, joined by straight lines.
 *
 * @param thumbnail the thumbnail it is drawn on
 * @param kind what the mark will do
 * @param pieces a corner is a piece of one node, a freehand line one of several
 * @param otherSide whether it closes along the border the other way round
 */
record Draft(String thumbnail, Mark.Kind kind, List<List<Node>> pieces, boolean otherSide) {
    /** A freehand line is shown by so many chords for each of its segments. */
    private static final int CHORDS = 8;

    Draft {
        pieces = List.copyOf(pieces);
    }

    static Draft begin(String thumbnail, Mark.Kind kind) {
        return new Draft(thumbnail, kind, List.of(), false);
    }

    boolean isEmpty() {
        return pieces.isEmpty();
    }

    Draft plus(List<Node> piece) {
        List<List<Node>> more = new ArrayList<>(pieces);
        more.add(List.copyOf(piece));
        return new Draft(thumbnail, kind, more, otherSide);
    }

    /** With a corner at {@code point}. */
    Draft plus(Point point) {
        return plus(List.of(Node.sharp(point)));
    }

    /** Without its last piece; empty where it has but one. */
    Optional<Draft> shorter() {
        return pieces.size() < 2
                ? Optional.empty()
                : Optional.of(new Draft(thumbnail, kind, pieces.subList(0, pieces.size() - 1), otherSide));
    }

    Draft swapped() {
        return new Draft(thumbnail, kind, pieces, !otherSide);
    }

    /** The outline so far. A piece that begins where the one before it ends shares that node with it. */
    Path path() {
        List<Node> nodes = new ArrayList<>();
        for (List<Node> piece : pieces) {
            int from = 0;
            Node first = piece.get(0);
            int last = nodes.size() - 1;
            if (last >= 0 && nodes.get(last).at().equals(first.at())) {
                nodes.set(last, new Node(first.at(), nodes.get(last).in(), first.out(), false));
                from = 1;
            }
            nodes.addAll(piece.subList(from, piece.size()));
        }
        return new Path(nodes);
    }

    /** Where it begins; not to be asked of an empty one. */
    Point start() {
        return pieces.get(0).get(0).at();
    }

    /** Where it ends so far; not to be asked of an empty one. */
    Point end() {
        List<Node> last = pieces.get(pieces.size() - 1);
        return last.get(last.size() - 1).at();
    }

    /** The outline so far as a line of chords. */
    List<Point> line() {
        List<Point> line = new ArrayList<>();
        if (!isEmpty()) {
            line.add(start());
        }
        for (Cubic segment : path().segments()) {
            int chords = segment.isLine() ? 1 : CHORDS;
            for (int i = 1; i <= chords; i++) {
                line.add(segment.at((double) i / chords));
            }
        }
        return line;
    }
}
