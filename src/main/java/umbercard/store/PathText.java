package umbercard.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.apache.batik.parser.ParseException;
import umbercard.geometry.Cubic;
import umbercard.geometry.Node;
import umbercard.geometry.Outline;
import umbercard.geometry.Path;
import umbercard.geometry.PathData;
import umbercard.geometry.Point;

/**
 * Outlines and paths as SVG path data, with a letter for each point that says how it is passed: {@code r} round, {@code s}
 * sharp. What lies on the grid of 1e-7 is read back exactly, except for the pulls that draw nothing: those before the first and after
 * the last point of an open path.
 *
 * <p>Source: Scalable Vector Graphics (SVG) 1.1, second edition, 8.3 Path data.
 */
final class PathText {
    /** Those of the grid of 1e-7 that coordinates snap to when an edit is made. */
    private static final int DECIMALS = 7;

    private PathText() {}

    static String of(Outline outline) {
        return PathData.of(outline, DECIMALS);
    }

    static String of(Path path) {
        return PathData.of(path, DECIMALS);
    }

    /** A letter for each point. */
    static String letters(List<Node> nodes) {
        return nodes.stream().map(node -> node.round() ? "r" : "s").collect(Collectors.joining());
    }

    /**
     * Reads an outline.
     *
     * @param letters one for each point; without them all are sharp
     * @throws IllegalArgumentException if the data are none, hold more than one outline, or do not fit the letters
     */
    static Outline outline(String data, Optional<String> letters) {
        return new Outline(nodes(data, letters, true));
    }

    /**
     * Reads an open path.
     *
     * @param letters one for each point; without them all are sharp
     * @throws IllegalArgumentException if the data are none, hold more than one path, or do not fit the letters
     */
    static Path path(String data, Optional<String> letters) {
        return new Path(nodes(data, letters, false));
    }

    private static List<Node> nodes(String data, Optional<String> letters, boolean closed) {
        PathReader reader = new PathReader();
        if (!data.isBlank()) {
            try {
                reader.parse(data);
            } catch (ParseException malformed) {
                throw new IllegalArgumentException("not path data: " + data, malformed);
            }
        }
        List<Point> ends = reader.ends();
        int count = ends.size();
        if (closed && returns(reader, letters)) {
            count--;
        }
        String passing = letters.orElse("s".repeat(count));
        check(passing.length() == count, () -> count(passing.length(), ends.size()));
        check(passing.matches("[rs]*"), () -> "a point is r or s: " + passing);
        check(closed || !reader.closes(), () -> "an open path does not close");
        List<Node> nodes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Point at = ends.get(i);
            int arriving = i > 0 ? i - 1 : closed ? count - 1 : -1;
            nodes.add(new Node(
                    at,
                    reader.segment(arriving).map(Cubic::pullEnd).orElse(at),
                    reader.segment(i).map(Cubic::pullStart).orElse(at),
                    passing.charAt(i) == 'r'));
        }
        return nodes;
    }

    /** Whether the last segment is the closing one, written out; the letters tell, or else where it ends. */
    private static boolean returns(PathReader reader, Optional<String> letters) {
        List<Point> ends = reader.ends();
        int last = ends.size() - 1;
        return last > 0
                && ends.get(last).equals(ends.get(0))
                && letters.map(l -> l.length() == last).orElse(true);
    }

    private static String count(int letters, int points) {
        return letters + " letters for " + points + " points";
    }

    private static void check(boolean holds, Supplier<String> otherwise) {
        if (!holds) {
            throw new IllegalArgumentException(otherwise.get());
        }
    }
}
