package umbercard.readings.value;

import static umbercard.door.Finding.Verdict.HOLDS;
import static umbercard.door.Finding.Verdict.LOOK_AGAIN;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import umbercard.color.MunsellValue;
import umbercard.door.Figure;
import umbercard.door.Finding;
import umbercard.door.Limit;
import umbercard.door.Limits;
import umbercard.door.Plan;
import umbercard.door.Reading;
import umbercard.door.Rule;
import umbercard.readings.Noted;
import umbercard.words.Message;
import umbercard.words.Words;

/**
 * Whether each zone's median note lies on the side of the split that the notan gives the zone. A dark zone may and should hold
 * some lights; so it is the median that counts. Sources: {@code readings.value-side.source}.
 */
public final class ValueSide implements Reading {
    private static final Rule RULE = new Rule(
            "value-side", 610, Map.of("over", new Limit(0.5, "steps", 0, 5)), Words.say("readings.value-side.source"));

    @Override
    public Rule rule() {
        return RULE;
    }

    /** @param over how far the median lies on the wrong side of the split, in steps; negative on the right one */
    private record Side(Noted zone, boolean dark, double median, double over) {
        static Side of(Noted zone, Plan plan, double split) {
            boolean dark = zone.place().isDark(plan.design());
            double median = zone.notes().median().orElseThrow();
            return new Side(zone, dark, median, dark ? median - split : split - median);
        }
    }

    @Override
    public Finding read(Plan plan, Limits limits) {
        double split = Split.of(plan);
        Optional<Side> worst = Noted.of(plan).stream()
                .map(zone -> Side.of(zone, plan, split))
                .max(Comparator.comparingDouble(Side::over));
        if (worst.isEmpty() || plan.isBlank()) {
            return Finding.notSet(Message.of(plan.isBlank() ? "readings.nothing-laid" : "readings.zones-need-notes"));
        }
        Side side = worst.get();
        boolean again = side.over() > limits.get("over") + Noted.HAIR;
        MunsellValue parted = Noted.said(split);
        return new Finding(
                again ? LOOK_AGAIN : HOLDS,
                List.of(new Figure("over", side.over(), "steps"), new Figure("split", split, "value")),
                again
                        ? Message.of(
                                "readings.value-side." + (side.dark() ? "dark" : "light"),
                                side.zone().name(),
                                Noted.said(side.median()),
                                parted)
                        : Message.of("readings.value-side.holds", parted),
                again ? List.of(Noted.place(side.zone())) : List.of());
    }
}
