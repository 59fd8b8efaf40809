package umbercard.readings.focus;

import static umbercard.door.Finding.Verdict.HOLDS;
import static umbercard.door.Finding.Verdict.LOOK_AGAIN;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import umbercard.door.Figure;
import umbercard.door.Finding;
import umbercard.door.Limit;
import umbercard.door.Limits;
import umbercard.door.Place;
import umbercard.door.Plan;
import umbercard.door.Reading;
import umbercard.door.Rule;
import umbercard.geometry.Crossings;
import umbercard.geometry.Crossings.Change;
import umbercard.geometry.Path;
import umbercard.geometry.Point;
import umbercard.geometry.Region;
import umbercard.readings.Corner;
import umbercard.words.Message;
import umbercard.words.Words;

/**
 * Where the eye's path enters and leaves, whether it passes the focus, and how often it goes from dark to light or back. It leaves
 * by a corner that is no farther from where it leaves the frame, or ends within it, than the limit. A path of fewer than two nodes
 * is not set. Sources: {@code readings.eye-path.source}.
 */
public final class EyePath implements Reading {
    private static final double HAIR = 1e-9;

    /** Of a curve. */
    private static final int PIECES = 32;

    private static final Rule RULE = new Rule(
            "eye-path",
            420,
            Map.of(
                    "corner", new Limit(0.04, "of the diagonal", 0, 0.25),
                    "miss", new Limit(0.08, "of the diagonal", 0.01, 0.5)),
            Words.say("readings.eye-path.source"));

    @Override
    public Rule rule() {
        return RULE;
    }

    @Override
    public Finding read(Plan plan, Limits limits) {
        Optional<Path> set = plan.thumbnail().eyePath();
        if (set.isEmpty() || set.get().nodes().size() < 2) {
            return Finding.notSet(Message.of("readings.eye-path.not-set"));
        }
        double ratio = plan.design().ratio();
        Crossings crossings = Crossings.along(set.get(), plan.design().dark());
        List<Point> line = line(set.get());
        Point first = line.get(0);
        Point last = end(set.get(), plan.design().frame(), line.get(line.size() - 1));
        List<Figure> figures = new ArrayList<>(List.of(
                new Figure("changes", crossings.changes().size(), "count"),
                new Figure("length", crossings.length() / plan.diagonal(), "of the diagonal")));
        Optional<Double> miss = plan.thumbnail().focus().map(focus -> miss(focus, line) / plan.diagonal());
        miss.ifPresent(distance -> figures.add(new Figure("miss", distance, "of the diagonal")));
        Point in = start(set.get(), plan.design().frame(), first);
        double fromCorner = Corner.nearest(in, ratio).at(ratio).distance(in) / plan.diagonal();
        figures.add(new Figure("enters-from-corner", fromCorner, "of the diagonal"));
        Corner out = Corner.nearest(last, ratio);
        double toCorner = out.at(ratio).distance(last) / plan.diagonal();
        figures.add(new Figure("leaves-from-corner", toCorner, "of the diagonal"));
        boolean missed =
                miss.filter(distance -> distance > limits.get("miss") + HAIR).isPresent();
        boolean cornered = toCorner <= limits.get("corner") + HAIR;
        String key = missed ? "misses" : cornered ? "corner" : miss.isPresent() ? "holds" : "no-focus";
        return new Finding(
                missed || cornered ? LOOK_AGAIN : HOLDS,
                figures,
                Message.of(
                        "readings.eye-path." + key,
                        out.words(),
                        crossings.changes().size()),
                List.of(new Place.Along(line), new Place.At(first)));
    }

    /** The path as straight pieces, fine enough to be looked at and measured from. */
    private static List<Point> line(Path path) {
        List<Point> line = new ArrayList<>();
        path.segments()
                .forEach(segment -> IntStream.range(0, PIECES).forEach(i -> line.add(segment.at((double) i / PIECES))));
        path.segments().stream().reduce((one, next) -> next).ifPresent(end -> line.add(end.end()));
        return line;
    }

    /** Where the path first enters the frame, or begins within it. */
    private static Point start(Path path, Region frame, Point first) {
        List<Change> changes = Crossings.along(path, frame).changes();
        return !changes.isEmpty() && changes.get(0).inward() ? changes.get(0).at() : first;
    }

    /** Where the path leaves the frame for good, or ends within it. */
    private static Point end(Path path, Region frame, Point last) {
        List<Change> changes = Crossings.along(path, frame).changes();
        boolean outside = !changes.isEmpty() && !changes.get(changes.size() - 1).inward();
        return outside ? changes.get(changes.size() - 1).at() : last;
    }

    private static double miss(Point focus, List<Point> line) {
        return IntStream.range(1, line.size())
                .mapToDouble(i -> distance(focus, line.get(i - 1), line.get(i)))
                .min()
                .orElse(Double.MAX_VALUE);
    }

    private static double distance(Point place, Point from, Point to) {
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        double square = dx * dx + dy * dy;
        double foot = square == 0 ? 0 : ((place.x() - from.x()) * dx + (place.y() - from.y()) * dy) / square;
        return place.distance(from.toward(to, Math.max(0, Math.min(1, foot))));
    }
}
