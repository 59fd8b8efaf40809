package umbercard.readings.focus;

import static umbercard.door.Finding.Verdict.HOLDS;
import static umbercard.door.Finding.Verdict.LOOK_AGAIN;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import umbercard.door.Figure;
import umbercard.door.Finding;
import umbercard.door.Limit;
import umbercard.door.Limits;
import umbercard.door.Place;
import umbercard.door.Plan;
import umbercard.door.Reading;
import umbercard.door.Rule;
import umbercard.geometry.Point;
import umbercard.readings.Fraction;
import umbercard.words.Message;
import umbercard.words.Words;

/**
 * Where the focus lies: how far from the frame's center, from its nearest side, and from the nearest crossing of the lines at
 * thirds and of those at golden sections, all as shares of the diagonal. Sources: {@code readings.focus-place.source}.
 */
public final class FocusPlace implements Reading {
    private static final double HAIR = 1e-9;

    private static final Rule RULE = new Rule(
            "focus-place",
            400,
            Map.of("within", new Limit(0.08, "of the diagonal", 0, 0.3)),
            Words.say("readings.focus-place.source"));

    @Override
    public Rule rule() {
        return RULE;
    }

    @Override
    public Finding read(Plan plan, Limits limits) {
        Optional<Point> set = plan.thumbnail().focus();
        if (set.isEmpty()) {
            return Finding.notSet(Message.of("readings.focus-not-set"));
        }
        Point focus = set.get();
        double ratio = plan.design().ratio();
        double center = focus.distance(new Point(ratio / 2, 0.5)) / plan.diagonal();
        double side = DoubleStream.of(focus.x(), ratio - focus.x(), focus.y(), 1 - focus.y())
                        .min()
                        .orElseThrow()
                / plan.diagonal();
        double within = limits.get("within") + HAIR;
        String key = center <= within ? "center" : side <= within ? "side" : "holds";
        Point thirds = crossing(focus, ratio, Fraction.THIRD.share());
        Point golden = crossing(focus, ratio, Fraction.LESSER_PART.share());
        double toThirds = focus.distance(thirds) / plan.diagonal();
        double toGolden = focus.distance(golden) / plan.diagonal();
        return new Finding(
                key.equals("holds") ? HOLDS : LOOK_AGAIN,
                List.of(
                        new Figure("to-center", center, "of the diagonal"),
                        new Figure("to-side", side, "of the diagonal"),
                        new Figure("to-thirds", toThirds, "of the diagonal"),
                        new Figure("to-golden", toGolden, "of the diagonal")),
                Message.of(
                        "readings.focus-place." + key,
                        100 * Math.min(toThirds, toGolden),
                        toThirds <= toGolden ? 0 : 1),
                List.of(new Place.Between(focus, toThirds <= toGolden ? thirds : golden), new Place.At(focus)));
    }

    /** The nearest crossing of the lines that cut off that share at both ends. */
    private static Point crossing(Point focus, double ratio, double share) {
        double x = focus.x() < ratio / 2 ? share * ratio : (1 - share) * ratio;
        double y = focus.y() < 0.5 ? share : 1 - share;
        return new Point(x, y);
    }
}
