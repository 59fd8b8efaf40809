package umbercard.readings.value;

import static umbercard.door.Finding.Verdict.HOLDS;
import static umbercard.door.Finding.Verdict.LOOK_AGAIN;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import umbercard.color.Lab;
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
import umbercard.model.Study;
import umbercard.model.Zone;
import umbercard.model.Zone.Distance;
import umbercard.model.Zone.Plane;
import umbercard.notes.ZoneNotes;
import umbercard.words.Message;
import umbercard.words.Words;

/**
 * Whether in one plane what is far contrasts less in value than what is near. The contrast of zones is that between the
 * lightest and the darkest of their notes that count; one note makes none. How much duller and cooler the far is are figures.
 * Sources: {@code readings.depth.source}.
 */
public final class Depth implements Reading {
    private static final Rule RULE =
            new Rule("depth", 650, Map.of("over", new Limit(0.5, "steps", 0, 5)), Words.say("readings.depth.source"));

    @Override
    public Rule rule() {
        return RULE;
    }

    /** The notes of one plane at one distance, two or more. */
    private record Group(Plane plane, Distance distance, List<Zone> zones, List<ColorNote> notes) {
        double contrast() {
            return notes.stream().mapToDouble(Group::value).max().orElseThrow()
                    - notes.stream().mapToDouble(Group::value).min().orElseThrow();
        }

        private static double value(ColorNote note) {
            return note.stick().color().value();
        }

        double mean(ToDoubleFunction<Lab> figure) {
            return notes.stream()
                    .mapToDouble(note -> figure.applyAsDouble(note.stick().color()))
                    .average()
                    .orElseThrow();
        }
    }

    private record Pair(Group far, Group near) {
        double over() {
            return far.contrast() - near.contrast();
        }
    }

    @Override
    public Finding read(Plan plan, Limits limits) {
        Optional<Pair> worst = pairs(groups(plan.study())).stream().max(Comparator.comparingDouble(Pair::over));
        if (worst.isEmpty()) {
            return Finding.notSet(Message.of("readings.depth.few"));
        }
        Pair pair = worst.get();
        boolean again = pair.over() > limits.get("over") + 1e-6;
        return new Finding(
                again ? LOOK_AGAIN : HOLDS,
                List.of(
                        new Figure("over", pair.over(), "steps"),
                        new Figure(
                                "chroma",
                                pair.near().mean(Lab::chroma) - pair.far().mean(Lab::chroma),
                                "chroma"),
                        new Figure(
                                "warmth",
                                pair.near().mean(Warmth::of) - pair.far().mean(Warmth::of),
                                "chroma")),
                again
                        ? Message.of(
                                "readings.depth.again",
                                names(pair.far()),
                                pair.far().contrast(),
                                names(pair.near()),
                                pair.near().contrast())
                        : Message.of("readings.depth.holds"),
                again ? List.of(place(pair)) : List.of());
    }

    private static String names(Group group) {
        return String.join(", ", group.zones().stream().map(Zone::name).toList());
    }

    private static Place place(Pair pair) {
        List<Zone> zones = new ArrayList<>(pair.far().zones());
        zones.addAll(pair.near().zones());
        List<ColorNote> notes = new ArrayList<>(pair.far().notes());
        notes.addAll(pair.near().notes());
        return new Place.Of(
                zones.stream().map(Zone::id).toList(),
                notes.stream().map(ColorNote::id).toList());
    }

    private static List<Group> groups(Study study) {
        List<ZoneNotes> all = ZoneNotes.of(study);
        List<Group> groups = new ArrayList<>();
        for (Plane plane : Plane.values()) {
            for (Distance distance : Distance.values()) {
                List<ZoneNotes> own = all.stream()
                        .filter(zone -> zone.zone().plane() == plane
                                && zone.zone().distance() == distance
                                && !zone.counting().isEmpty())
                        .toList();
                List<ColorNote> notes =
                        own.stream().flatMap(zone -> zone.counting().stream()).toList();
                if (notes.size() > 1) {
                    groups.add(new Group(
                            plane, distance, own.stream().map(ZoneNotes::zone).toList(), notes));
                }
            }
        }
        return groups;
    }

    private static List<Pair> pairs(List<Group> groups) {
        List<Pair> pairs = new ArrayList<>();
        for (Group far : groups) {
            for (Group near : groups) {
                if (far.plane() == near.plane() && far.distance().compareTo(near.distance()) < 0) {
                    pairs.add(new Pair(far, near));
                }
            }
        }
        return pairs;
    }
}
