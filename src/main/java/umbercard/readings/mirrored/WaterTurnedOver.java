package umbercard.readings.mirrored;

import static umbercard.door.Finding.Verdict.HOLDS;
import static umbercard.door.Finding.Verdict.LOOK_AGAIN;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import umbercard.color.Ciede2000;
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
import umbercard.model.Zone;
import umbercard.model.Zone.Plane;
import umbercard.notes.Purposes;
import umbercard.notes.ZoneNotes;
import umbercard.notes.turned.SkyBand;
import umbercard.notes.turned.VisibleSky;
import umbercard.words.Message;
import umbercard.words.Words;
import umbercard.zones.ZonePlace;

/**
 * Whether the water has the sky's order turned over: its notes, far to near as they are laid, against the sky's from the horizon
 * up. Each water note stands for the sky stick nearest in color (CIEDE2000); sky that is hidden from the water is left out, and
 * so are notes of the water that mirror the land or grow in it. Sources: {@code readings.water-turned-over.source}.
 */
public final class WaterTurnedOver implements Reading {
    private static final int FEWEST = 3;

    private static final Set<String> NOT_OF_THE_SKY =
            Set.of(Purposes.BLOCK_IN, Purposes.DARKS, Purposes.REFLECTIONS, Purposes.GROWTH, Purposes.RESTATED_GROWTH);

    private static final Rule RULE = new Rule(
            "water-turned-over",
            670,
            Map.of("least", new Limit(0.6, "tau", -1, 1)),
            Words.say("readings.water-turned-over.source"));

    @Override
    public Rule rule() {
        return RULE;
    }

    @Override
    public Finding read(Plan plan, Limits limits) {
        List<ColorNote> water = water(plan);
        if (water.size() < FEWEST) {
            return Finding.notSet(Message.of("readings.water-turned-over.few", water.size()));
        }
        List<SkyBand> sky =
                VisibleSky.of(plan.study(), plan.thumbnail(), plan.zones()).seen();
        if (sky.size() < 2) {
            return Finding.notSet(Message.of("readings.water-turned-over.no-sky"));
        }
        double[] order = IntStream.range(0, water.size()).asDoubleStream().toArray();
        double[] mirrored =
                water.stream().mapToDouble(note -> nearest(note.stick(), sky)).toArray();
        double tau = RankAgreement.of(order, mirrored);
        boolean again = tau < limits.get("least");
        return new Finding(
                again ? LOOK_AGAIN : HOLDS,
                List.of(new Figure("agreement", tau, "tau")),
                Message.of("readings.water-turned-over." + (again ? "again" : "holds"), tau),
                again
                        ? List.of(new Place.Of(
                                List.of(), water.stream().map(ColorNote::id).toList()))
                        : List.of());
    }

    /** The notes of the water that may mirror the sky, the farthest first. */
    private static List<ColorNote> water(Plan plan) {
        Comparator<Zone> farthest = Comparator.comparingDouble(
                zone -> plan.zones().of(zone.id()).map(ZonePlace::height).orElse(1.0));
        return plan.study().zones().stream()
                .filter(zone -> zone.plane() == Plane.WATER)
                .sorted(farthest)
                .flatMap(zone -> ZoneNotes.of(plan.study(), zone).counting().stream())
                .filter(note -> !NOT_OF_THE_SKY.contains(note.purpose()))
                .toList();
    }

    private static int nearest(Stick stick, List<SkyBand> sky) {
        return IntStream.range(0, sky.size())
                .boxed()
                .min(Comparator.comparingDouble(i -> Ciede2000.difference(
                        stick.color(), sky.get(i).note().stick().color())))
                .orElseThrow();
    }
}
