package umbercard.readings.share;

import static umbercard.door.Finding.Verdict.HOLDS;
import static umbercard.door.Finding.Verdict.LOOK_AGAIN;
import static umbercard.door.Finding.Verdict.NOT_SET;

import java.util.List;
import java.util.Map;
import umbercard.door.Figure;
import umbercard.door.Finding;
import umbercard.door.Finding.Verdict;
import umbercard.door.Limit;
import umbercard.door.Limits;
import umbercard.door.Plan;
import umbercard.door.Reading;
import umbercard.door.Rule;
import umbercard.model.Light;
import umbercard.readings.Fraction;
import umbercard.words.Message;
import umbercard.words.Words;

/**
 * How much of the frame is dark: the area of the dark region as a share of the frame's, 0..1, and the named fraction next to
 * it. An even split is dull, and next to no dark or next to no light says little; night and snow bear more of one. A card
 * without a mark that counts is not set. Sources: {@code readings.dark-share.source}.
 */
public final class DarkShare implements Reading {
    /** What a share may miss a limit by and still be on it: far under the error of the fold. */
    private static final double HAIR = 1e-9;

    private static final Rule RULE = new Rule(
            "dark-share",
            100,
            Map.of(
                    "even", new Limit(0.05, "share", 0, 0.5),
                    "least", new Limit(0.10, "share", 0, 0.5),
                    "least-night-snow", new Limit(0.05, "share", 0, 0.5),
                    "most", new Limit(0.90, "share", 0.5, 1),
                    "most-night-snow", new Limit(0.95, "share", 0.5, 1)),
            Words.say("readings.dark-share.source"));

    @Override
    public Rule rule() {
        return RULE;
    }

    @Override
    public Finding read(Plan plan, Limits limits) {
        double dark = plan.design().darkShare();
        Fraction nearest = Fraction.nearest(dark, List.of(Fraction.values()));
        List<Figure> figures = List.of(
                new Figure("dark", dark, "share"),
                new Figure("nearest", nearest.share(), "share"),
                new Figure("distance", Math.abs(dark - nearest.share()), "share"));
        if (plan.isBlank()) {
            return finding(NOT_SET, figures, Message.of("readings.dark-share.not-set"));
        }
        if (Math.abs(dark - 0.5) <= limits.get("even") + HAIR) {
            return finding(LOOK_AGAIN, figures, Message.of("readings.dark-share.even", percent(dark)));
        }
        String wide = isNightOrSnow(plan.study().light()) ? "-night-snow" : "";
        if (dark < limits.get("least" + wide) - HAIR) {
            return finding(LOOK_AGAIN, figures, Message.of("readings.dark-share.little-dark", percent(dark)));
        }
        if (dark > limits.get("most" + wide) + HAIR) {
            return finding(LOOK_AGAIN, figures, Message.of("readings.dark-share.little-light", percent(1 - dark)));
        }
        return finding(HOLDS, figures, holds(dark, nearest));
    }

    private static boolean isNightOrSnow(Light light) {
        return light == Light.NIGHT || light == Light.SNOW;
    }

    private static Message holds(double dark, Fraction nearest) {
        long points = Math.round(percent(dark - nearest.share()));
        String side = points == 0 ? "on" : points > 0 ? "over" : "under";
        return Message.of("readings.dark-share." + side, percent(dark), nearest.words(), Math.abs(points));
    }

    private static double percent(double share) {
        return 100 * share;
    }

    private static Finding finding(Verdict verdict, List<Figure> figures, Message sentence) {
        return new Finding(verdict, figures, sentence, List.of());
    }
}
