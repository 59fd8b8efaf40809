package umbercard.readings.shapes;

import static umbercard.door.Finding.Verdict.HOLDS;
import static umbercard.door.Finding.Verdict.LOOK_AGAIN;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import umbercard.door.Figure;
import umbercard.door.Finding;
import umbercard.door.Limit;
import umbercard.door.Limits;
import umbercard.door.Place;
import umbercard.door.Plan;
import umbercard.door.Reading;
import umbercard.door.Rule;
import umbercard.geometry.Mass;
import umbercard.words.Message;
import umbercard.words.Words;

/**
 * Pairs of large masses of one value that are nearly of one size: none of the two is the chief. Sources: {@code
 * readings.alike-masses.source}.
 */
public final class AlikeMasses implements Reading {
    /** What a share may miss a limit by and still be on it: over the error of a small mass's area, for the grid it is drawn on. */
    private static final double HAIR = 1e-7;

    private static final Rule RULE = new Rule(
            "alike-masses",
            330,
            Map.of(
                    "differ", new Limit(0.10, "share", 0, 1),
                    "least-share", new Limit(0.02, "share", 0.001, 0.5)),
            Words.say("readings.alike-masses.source"));

    @Override
    public Rule rule() {
        return RULE;
    }

    private record Pair(Mass larger, Mass smaller, boolean dark) {
        /** By how much the smaller is smaller, as a share of the larger. */
        double difference() {
            return 1 - smaller.share() / larger.share();
        }
    }

    @Override
    public Finding read(Plan plan, Limits limits) {
        if (plan.isBlank()) {
            return Finding.notSet(Message.of("readings.nothing-laid"));
        }
        List<Pair> all = new ArrayList<>(pairs(plan.masses().dark(), true, limits));
        all.addAll(pairs(plan.masses().light(), false, limits));
        List<Pair> alike = all.stream()
                .filter(pair -> pair.difference() < limits.get("differ") - HAIR)
                .sorted(Comparator.comparingDouble(Pair::difference))
                .toList();
        double least = all.stream().mapToDouble(Pair::difference).min().orElse(1);
        return new Finding(
                alike.isEmpty() ? HOLDS : LOOK_AGAIN,
                List.of(new Figure("pairs", alike.size(), "count"), new Figure("least-difference", least, "share")),
                alike.stream().findFirst().map(AlikeMasses::sentence).orElse(Message.of("readings.alike-masses.holds")),
                alike.stream()
                        .limit(1)
                        .flatMap(pair -> Stream.of(pair.larger, pair.smaller))
                        .<Place>map(mass -> new Place.Over(mass.region()))
                        .toList());
    }

    private static Message sentence(Pair pair) {
        return Message.of(
                "readings.alike-masses.again",
                Message.of("readings.value." + (pair.dark ? "dark" : "light")),
                100 * pair.larger.share(),
                100 * pair.smaller.share());
    }

    /** All pairs of large masses, which come the largest first. */
    private static List<Pair> pairs(List<Mass> masses, boolean dark, Limits limits) {
        List<Mass> large = masses.stream()
                .filter(mass -> mass.share() >= limits.get("least-share") - HAIR)
                .toList();
        return IntStream.range(0, large.size())
                .boxed()
                .flatMap(i ->
                        IntStream.range(i + 1, large.size()).mapToObj(k -> new Pair(large.get(i), large.get(k), dark)))
                .toList();
    }
}
