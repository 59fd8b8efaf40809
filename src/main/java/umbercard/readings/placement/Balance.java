package umbercard.readings.placement;

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
import umbercard.geometry.Moments;
import umbercard.geometry.Point;
import umbercard.geometry.Region;
import umbercard.words.Message;
import umbercard.words.Words;

/**
 * Where the middle of the dark lies: its center of gravity from the frame's center, in half widths to the right and half heights
 * downward; how much of it lies left and above the middle; and how far it spreads, as the root of its second moments in half
 * widths and half heights. Sources: {@code readings.balance.source}.
 */
public final class Balance implements Reading {
    /** What a distance may miss a limit by and still be on it. */
    private static final double HAIR = 1e-9;

    private static final Rule RULE = new Rule(
            "balance", 220, Map.of("most", new Limit(0.35, "half widths", 0, 1)), Words.say("readings.balance.source"));

    @Override
    public Rule rule() {
        return RULE;
    }

    @Override
    public Finding read(Plan plan, Limits limits) {
        double ratio = plan.design().ratio();
        Region dark = plan.design().dark();
        Moments moments = dark.moments();
        Optional<Point> middle = moments.centroid();
        if (plan.isBlank() || middle.isEmpty() || plan.design().darkShare() > 1 - HAIR) {
            String key = plan.isBlank() ? "readings.nothing-laid" : "readings.one-value";
            return Finding.notSet(Message.of(key));
        }
        double across = (middle.get().x() - ratio / 2) / (ratio / 2);
        double down = (middle.get().y() - 0.5) / 0.5;
        boolean again = Math.abs(across) > limits.get("most") + HAIR;
        String side = across < 0 ? "left" : "right";
        return new Finding(
                again ? LOOK_AGAIN : HOLDS,
                List.of(
                        new Figure("across", across, "half widths"),
                        new Figure("down", down, "half heights"),
                        new Figure("left", share(dark, Region.rectangle(0, 0, ratio / 2, 1)), "share"),
                        new Figure("above", share(dark, Region.rectangle(0, 0, ratio, 0.5)), "share"),
                        new Figure("spread-across", spread(moments.central().xx(), dark) / (ratio / 2), "half widths"),
                        new Figure("spread-down", spread(moments.central().yy(), dark) / 0.5, "half heights")),
                Message.of("readings.balance." + (again ? side : "holds"), 100 * Math.abs(across)),
                List.of(new Place.At(middle.get())));
    }

    private static double share(Region dark, Region half) {
        return dark.intersect(half).area() / dark.area();
    }

    private static double spread(double moment, Region dark) {
        return Math.sqrt(Math.max(0, moment) / dark.area());
    }
}
