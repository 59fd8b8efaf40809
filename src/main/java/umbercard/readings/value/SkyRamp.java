package umbercard.readings.value;

import static umbercard.door.Finding.Verdict.DOES_NOT_APPLY;
import static umbercard.door.Finding.Verdict.HOLDS;
import static umbercard.door.Finding.Verdict.LOOK_AGAIN;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import umbercard.color.Warmth;
import umbercard.door.Figure;
import umbercard.door.Finding;
import umbercard.door.Limit;
import umbercard.door.Limits;
import umbercard.door.Place;
import umbercard.door.Plan;
import umbercard.door.Reading;
import umbercard.door.Rule;
import umbercard.model.ColorNote;
import umbercard.model.Light;
import umbercard.model.Study;
import umbercard.model.Zone;
import umbercard.notes.ZoneNotes;
import umbercard.words.Message;
import umbercard.words.Words;
import umbercard.zones.ZoneMap;

/**
 * Whether a clear sky grows lighter from the top to the horizon: the values of its notes that count, upper zones first, within a
 * zone in the order of the card. How warm the last is, is a figure. Sources: {@code readings.sky-ramp.source}.
 */
public final class SkyRamp implements Reading {
    private static final Rule RULE = new Rule(
            "sky-ramp", 660, Map.of("drop", new Limit(0.5, "steps", 0, 5)), Words.say("readings.sky-ramp.source"));

    @Override
    public Rule rule() {
        return RULE;
    }

    @Override
    public Finding read(Plan plan, Limits limits) {
        Light light = plan.study().light();
        if (light != Light.CLEAR) {
            Message lit = Message.of("trade.light." + light.key());
            return new Finding(DOES_NOT_APPLY, List.of(), Message.of("readings.sky-ramp.no-ramp", lit), List.of());
        }
        List<ColorNote> sky = sky(plan.study(), plan.zones());
        if (sky.size() < 2) {
            return Finding.notSet(Message.of("readings.sky-ramp.few"));
        }
        double rise = value(sky.get(sky.size() - 1)) - value(sky.get(0));
        double drop = 0;
        int worst = 0;
        for (int i = 1; i < sky.size(); i++) {
            double down = value(sky.get(i - 1)) - value(sky.get(i));
            if (down > drop) {
                drop = down;
                worst = i;
            }
        }
        boolean falls = drop > limits.get("drop") + 1e-6;
        boolean again = falls || rise <= 0;
        return new Finding(
                again ? LOOK_AGAIN : HOLDS,
                List.of(
                        new Figure("rise", rise, "steps"),
                        new Figure("drop", drop, "steps"),
                        new Figure(
                                "warmth",
                                Warmth.of(sky.get(sky.size() - 1).stick().color()),
                                "chroma")),
                falls
                        ? Message.of(
                                "readings.sky-ramp.falls",
                                sky.get(worst - 1).stick().title(),
                                sky.get(worst).stick().title())
                        : Message.of("readings.sky-ramp." + (again ? "level" : "holds")),
                again ? List.of(place(sky)) : List.of());
    }

    private static double value(ColorNote note) {
        return note.stick().color().value();
    }

    private static Place place(List<ColorNote> sky) {
        return new Place.Of(
                sky.stream().flatMap(note -> note.zone().stream()).distinct().toList(),
                sky.stream().map(ColorNote::id).toList());
    }

    private static List<ColorNote> sky(Study study, ZoneMap map) {
        return ZoneNotes.of(study).stream()
                .filter(zone -> zone.zone().plane() == Zone.Plane.SKY)
                .sorted(Comparator.comparingDouble(zone ->
                        map.of(zone.zone().id()).map(place -> place.height()).orElse(0.0)))
                .flatMap(zone -> zone.counting().stream())
                .toList();
    }
}
