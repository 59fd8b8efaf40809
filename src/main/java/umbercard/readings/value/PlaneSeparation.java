package umbercard.readings.value;

import static umbercard.door.Finding.Verdict.HOLDS;
import static umbercard.door.Finding.Verdict.LOOK_AGAIN;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import umbercard.door.Figure;
import umbercard.door.Finding;
import umbercard.door.Limit;
import umbercard.door.Limits;
import umbercard.door.Plan;
import umbercard.door.Reading;
import umbercard.door.Rule;
import umbercard.notes.turned.PartedPlanes;
import umbercard.readings.Noted;
import umbercard.words.Message;
import umbercard.words.Words;
import umbercard.zones.ZonePair;

/**
 * The step of value between zones that touch, by the means of their notes; an edge that the painter marked as lost is left out.
 * Sources: {@code readings.plane-separation.source}.
 */
public final class PlaneSeparation implements Reading {
    private static final Rule RULE = new Rule(
            "plane-separation",
            640,
            Map.of("least", new Limit(PartedPlanes.STEP, "steps", 0, 5)),
            Words.say("readings.plane-separation.source"));

    @Override
    public Rule rule() {
        return RULE;
    }

    private record Touching(Noted farther, Noted nearer) {
        double step() {
            return Math.abs(farther.mean() - nearer.mean());
        }
    }

    @Override
    public Finding read(Plan plan, Limits limits) {
        List<Noted> zones = Noted.of(plan);
        List<Touching> touching = zones.size() < 2
                ? List.of()
                : plan.zones().touching().stream()
                        .filter(pair -> !plan.study().lostEdges().contains(pair.edge()))
                        .flatMap(pair -> touching(pair, zones).stream())
                        .sorted(Comparator.comparingDouble(Touching::step))
                        .toList();
        if (touching.isEmpty()) {
            return Finding.notSet(Message.of("readings.plane-separation.none"));
        }
        Touching closest = touching.get(0);
        long close = touching.stream()
                .filter(pair -> pair.step() < limits.get("least") - Noted.HAIR)
                .count();
        return new Finding(
                close > 0 ? LOOK_AGAIN : HOLDS,
                List.of(new Figure("least-step", closest.step(), "steps"), new Figure("close-pairs", close, "count")),
                close > 0
                        ? Message.of(
                                "readings.plane-separation.again",
                                closest.farther().name(),
                                Noted.said(closest.farther().mean()),
                                closest.nearer().name(),
                                Noted.said(closest.nearer().mean()))
                        : Message.of("readings.plane-separation.holds"),
                close > 0 ? List.of(Noted.place(closest.farther(), closest.nearer())) : List.of());
    }

    private static Optional<Touching> touching(ZonePair pair, List<Noted> zones) {
        return noted(pair.farther().zone().id(), zones)
                .flatMap(far -> noted(pair.nearer().zone().id(), zones).map(near -> new Touching(far, near)));
    }

    private static Optional<Noted> noted(String id, List<Noted> zones) {
        return zones.stream()
                .filter(zone -> zone.place().zone().id().equals(id))
                .findFirst();
    }
}
