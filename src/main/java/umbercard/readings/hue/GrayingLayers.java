package umbercard.readings.hue;

import static umbercard.door.Finding.Verdict.FIGURE_ONLY;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import umbercard.color.Lab;
import umbercard.door.Figure;
import umbercard.door.Finding;
import umbercard.door.Limits;
import umbercard.door.Place;
import umbercard.door.Plan;
import umbercard.door.Reading;
import umbercard.door.Rule;
import umbercard.model.ColorNote;
import umbercard.notes.ZoneNotes;
import umbercard.words.Message;
import umbercard.words.Words;

/**
 * Notes of one zone laid one over the next whose hues lie opposite and which both have chroma: they may gray each other, which
 * may be wanted. A figure, which no rule is tied to.
 */
public final class GrayingLayers implements Reading {
    private static final double FROM = 150;
    private static final double TO = 210;
    private static final double CHROMA = 20;

    private static final Rule RULE =
            new Rule("graying-layers", 710, Map.of(), Words.say("readings.graying-layers.source"));

    @Override
    public Rule rule() {
        return RULE;
    }

    private record Pair(ZoneNotes zone, ColorNote under, ColorNote over) {
        boolean grays() {
            Lab one = under.stick().color();
            Lab other = over.stick().color();
            double apart = Math.abs(one.hue() - other.hue());
            return one.chroma() > CHROMA && other.chroma() > CHROMA && apart >= FROM && apart <= TO;
        }
    }

    @Override
    public Finding read(Plan plan, Limits limits) {
        List<Pair> pairs = new ArrayList<>();
        for (ZoneNotes zone : ZoneNotes.of(plan.study())) {
            for (int i = 1; i < zone.counting().size(); i++) {
                pairs.add(new Pair(
                        zone, zone.counting().get(i - 1), zone.counting().get(i)));
            }
        }
        if (pairs.isEmpty()) {
            return Finding.notSet(Message.of("readings.graying-layers.none"));
        }
        List<Pair> graying = pairs.stream().filter(Pair::grays).toList();
        return new Finding(
                FIGURE_ONLY,
                List.of(new Figure("pairs", graying.size(), "count")),
                graying.stream()
                        .findFirst()
                        .map(pair -> Message.of(
                                "readings.graying-layers.figure",
                                pair.over().stick().title(),
                                pair.under().stick().title(),
                                pair.zone().zone().name(),
                                graying.size() - 1))
                        .orElse(Message.of("readings.graying-layers.clear")),
                graying.stream()
                        .<Place>map(pair -> new Place.Of(
                                List.of(pair.zone().zone().id()),
                                List.of(pair.under().id(), pair.over().id())))
                        .toList());
    }
}
