package umbercard.readings.order;

import static umbercard.door.Finding.Verdict.HOLDS;
import static umbercard.door.Finding.Verdict.LOOK_AGAIN;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import umbercard.door.Figure;
import umbercard.door.Finding;
import umbercard.door.Limits;
import umbercard.door.Place;
import umbercard.door.Plan;
import umbercard.door.Reading;
import umbercard.door.Rule;
import umbercard.notes.order.Arranged;
import umbercard.notes.order.Arranging;
import umbercard.words.Message;
import umbercard.words.Words;

/**
 * Color notes that stand before one they should follow, by the rules of the order of application ({@link
 * umbercard.notes.order.OrderRule}) that the study does not pass over. What only dust would have otherwise is a figure. A pair
 * that a pinned note keeps as it is counts: the rules are told, the painter decides.
 */
public final class ApplicationOrder implements Reading {
    private static final Rule RULE = new Rule("order", 690, Map.of(), Words.say("readings.order.source"));

    @Override
    public Rule rule() {
        return RULE;
    }

    @Override
    public Finding read(Plan plan, Limits limits) {
        if (plan.study().notes().size() < 2) {
            return Finding.notSet(Message.of("readings.order.none"));
        }
        Arranged arranged = Arranging.of(plan.study(), plan.zones());
        List<Arranged.Broken> broken = arranged.broken();
        return new Finding(
                broken.isEmpty() ? HOLDS : LOOK_AGAIN,
                List.of(
                        new Figure("pairs", broken.size(), "count"),
                        new Figure("dust-pairs", arranged.dust(), "count"),
                        new Figure("circles", arranged.circles().size(), "count")),
                broken.stream().findFirst().map(this::sentence).orElse(Message.of("readings.order.holds")),
                broken.stream().limit(1).map(ApplicationOrder::place).toList());
    }

    private Message sentence(Arranged.Broken pair) {
        return Message.of(
                "readings.order.again",
                pair.early().stick().title(),
                pair.late().stick().title(),
                pair.rule().words());
    }

    private static Place place(Arranged.Broken pair) {
        return new Place.Of(
                Stream.of(pair.early(), pair.late())
                        .flatMap(note -> note.zone().stream())
                        .distinct()
                        .toList(),
                List.of(pair.early().id(), pair.late().id()));
    }
}
