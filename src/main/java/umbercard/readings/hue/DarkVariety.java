package umbercard.readings.hue;

import static umbercard.door.Finding.Verdict.HOLDS;
import static umbercard.door.Finding.Verdict.LOOK_AGAIN;

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
import umbercard.readings.Noted;
import umbercard.words.Message;
import umbercard.words.Words;

/**
 * Whether of the notes laid first in the dark zones, one is warm and one is cool; what has little chroma is neither. Sources:
 * {@code readings.dark-variety.source}.
 */
public final class DarkVariety implements Reading {
    private static final Rule RULE = new Rule(
            "dark-variety",
            620,
            Map.of("neutral", new Limit(Warmth.NEUTRAL, "chroma", 0, 30)),
            Words.say("readings.dark-variety.source"));

    @Override
    public Rule rule() {
        return RULE;
    }

    @Override
    public Finding read(Plan plan, Limits limits) {
        List<ColorNote> first = Noted.of(plan).stream()
                .filter(zone -> zone.place().isDark(plan.design()))
                .map(zone -> zone.notes().counting().get(0))
                .toList();
        if (first.isEmpty()) {
            return Finding.notSet(Message.of("readings.dark-variety.none"));
        }
        double neutral = limits.get("neutral");
        long warm = first.stream().filter(note -> warmth(note) >= neutral).count();
        long cool = first.stream().filter(note -> warmth(note) <= -neutral).count();
        boolean again = warm == 0 || cool == 0;
        return new Finding(
                again ? LOOK_AGAIN : HOLDS,
                List.of(
                        new Figure("warm", warm, "count"),
                        new Figure("cool", cool, "count"),
                        new Figure("neutral", first.size() - warm - cool, "count")),
                Message.of("readings.dark-variety." + (again ? key(warm, cool) : "holds")),
                again ? List.of(place(first)) : List.of());
    }

    private static String key(long warm, long cool) {
        return warm > 0 ? "no-cool" : cool > 0 ? "no-warm" : "neutral";
    }

    private static double warmth(ColorNote note) {
        return Warmth.of(note.stick().color());
    }

    private static Place place(List<ColorNote> notes) {
        return new Place.Of(
                notes.stream().flatMap(note -> note.zone().stream()).toList(),
                notes.stream().map(ColorNote::id).toList());
    }
}
