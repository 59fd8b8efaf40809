package umbercard.readings.mirrored;

import static umbercard.door.Finding.Verdict.DOES_NOT_APPLY;
import static umbercard.door.Finding.Verdict.HOLDS;
import static umbercard.door.Finding.Verdict.LOOK_AGAIN;

import java.util.List;
import java.util.Map;
import umbercard.door.Figure;
import umbercard.door.Finding;
import umbercard.door.Limit;
import umbercard.door.Limits;
import umbercard.door.Place;
import umbercard.door.Plan;
import umbercard.door.Reading;
import umbercard.door.Rule;
import umbercard.model.ColorNote;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Zone.Plane;
import umbercard.notes.ZoneNotes;
import umbercard.notes.turned.EchoedHues;
import umbercard.words.Message;
import umbercard.words.Words;

/** How many hues of the sky return in the ground. Sources: {@code readings.echo.source}. */
public final class Echo implements Reading {
    private static final Rule RULE = new Rule(
            "echo",
            680,
            Map.of("within", new Limit(EchoedHues.WITHIN, "degrees", 5, 90)),
            Words.say("readings.echo.source"));

    @Override
    public Rule rule() {
        return RULE;
    }

    @Override
    public Finding read(Plan plan, Limits limits) {
        Study study = plan.study();
        List<ColorNote> ground = EchoedHues.ofGround(study);
        if (ground.isEmpty() || !hasSky(study)) {
            return Finding.notSet(Message.of("readings.echo.not-set"));
        }
        List<Stick> sky = EchoedHues.ofSky(study);
        if (sky.isEmpty()) {
            return new Finding(DOES_NOT_APPLY, List.of(), Message.of("readings.echo.gray"), List.of());
        }
        double within = limits.get("within");
        List<ColorNote> echoes = ground.stream()
                .filter(note -> sky.stream().anyMatch(stick -> EchoedHues.isEcho(stick, note.stick(), within)))
                .toList();
        long returning = sky.stream()
                .filter(stick -> ground.stream().anyMatch(note -> EchoedHues.isEcho(stick, note.stick(), within)))
                .count();
        return new Finding(
                returning == 0 ? LOOK_AGAIN : HOLDS,
                List.of(new Figure("returning", returning, "count"), new Figure("of", sky.size(), "count")),
                returning == 0
                        ? Message.of("readings.echo.again", sky.get(0).title())
                        : Message.of(
                                "readings.echo.holds",
                                returning,
                                sky.size(),
                                echoes.get(0).stick().title()),
                List.of(place(returning == 0 ? skyNotes(study) : echoes)));
    }

    private static Place place(List<ColorNote> echoes) {
        return new Place.Of(List.of(), echoes.stream().map(ColorNote::id).toList());
    }

    private static boolean hasSky(Study study) {
        return !skyNotes(study).isEmpty();
    }

    private static List<ColorNote> skyNotes(Study study) {
        return study.zones().stream()
                .filter(zone -> zone.plane() == Plane.SKY)
                .flatMap(zone -> ZoneNotes.of(study, zone).counting().stream())
                .toList();
    }
}
