package umbercard.readings.focus;

import static umbercard.door.Finding.Verdict.HOLDS;
import static umbercard.door.Finding.Verdict.LOOK_AGAIN;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import umbercard.door.Figure;
import umbercard.door.Finding;
import umbercard.door.Limit;
import umbercard.door.Limits;
import umbercard.door.Place;
import umbercard.door.Plan;
import umbercard.door.Reading;
import umbercard.door.Rule;
import umbercard.geometry.Borderline;
import umbercard.geometry.Circle;
import umbercard.geometry.Point;
import umbercard.words.Message;
import umbercard.words.Words;

/**
 * How much more edge between dark and light there is about the focus than elsewhere: the length of edge within a circle, for the
 * area of the circle within the frame, divided by the same for the whole frame. 1 where the focus is like any place. Sources:
 * {@code readings.focus-contrast.source}.
 */
public final class FocusContrast implements Reading {
    private static final double HAIR = 1e-9;

    private static final Rule RULE = new Rule(
            "focus-contrast",
            410,
            Map.of(
                    "least", new Limit(1, "times", 0, 10),
                    "radius", new Limit(0.12, "of the diagonal", 0.02, 0.5)),
            Words.say("readings.focus-contrast.source"));

    @Override
    public Rule rule() {
        return RULE;
    }

    @Override
    public Finding read(Plan plan, Limits limits) {
        Optional<Point> focus = plan.thumbnail().focus();
        if (focus.isEmpty()) {
            return Finding.notSet(Message.of("readings.focus-not-set"));
        }
        double ratio = plan.design().ratio();
        Borderline edges = Borderline.withinFrame(plan.design().dark(), ratio);
        if (edges.length() < HAIR) {
            String key = plan.isBlank() ? "readings.nothing-laid" : "readings.one-value";
            return Finding.notSet(Message.of(key));
        }
        Circle about = new Circle(focus.get(), limits.get("radius") * plan.diagonal());
        double area = about.areaWithin(plan.design().frame());
        double here = area < HAIR ? 0 : edges.lengthWithin(about) / area;
        double times = here / (edges.length() / ratio);
        boolean again = times < limits.get("least") - HAIR;
        return new Finding(
                again ? LOOK_AGAIN : HOLDS,
                List.of(new Figure("contrast", times, "times"), new Figure("edge", here, "per height")),
                Message.of("readings.focus-contrast." + (here < HAIR ? "none" : again ? "again" : "holds"), times),
                List.of(new Place.At(focus.get())));
    }
}
