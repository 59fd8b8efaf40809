package umbercard.readings.shapes;

import static umbercard.door.Finding.Verdict.HOLDS;
import static umbercard.door.Finding.Verdict.LOOK_AGAIN;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
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
import umbercard.geometry.Masses;
import umbercard.words.Message;
import umbercard.words.Words;

/**
 * How many masses of dark and of light there are that take up a good part of the frame. Of one alone nothing can be made, many
 * make no one picture. Sources: {@code readings.big-masses.source}.
 */
public final class BigMasses implements Reading {
    /** What a share may miss a limit by and still be on it. */
    private static final double HAIR = 1e-9;

    private static final Rule RULE = new Rule(
            "big-masses",
            300,
            Map.of(
                    "fewest", new Limit(2, "count", 1, 20),
                    "least-share", new Limit(0.02, "share", 0.001, 0.5),
                    "most", new Limit(7, "count", 2, 100)),
            Words.say("readings.big-masses.source"));

    @Override
    public Rule rule() {
        return RULE;
    }

    @Override
    public Finding read(Plan plan, Limits limits) {
        if (plan.isBlank()) {
            return Finding.notSet(Message.of("readings.nothing-laid"));
        }
        Masses masses = plan.masses();
        List<Mass> dark = large(masses.dark(), limits);
        List<Mass> light = large(masses.light(), limits);
        int together = dark.size() + light.size();
        List<Figure> figures = List.of(
                new Figure("together", together, "count"),
                new Figure("dark", dark.size(), "count"),
                new Figure("light", light.size(), "count"));
        boolean few = together < limits.get("fewest");
        boolean many = together > limits.get("most");
        String key = few ? "few" : many ? "many" : "holds";
        return new Finding(
                few || many ? LOOK_AGAIN : HOLDS,
                figures,
                Message.of("readings.big-masses." + key, together, dark.size(), light.size()),
                many ? smallest(dark, light, together - (int) limits.get("most")) : List.of());
    }

    private static List<Mass> large(List<Mass> masses, Limits limits) {
        return masses.stream()
                .filter(mass -> mass.share() >= limits.get("least-share") - HAIR)
                .toList();
    }

    /** Those that are one too many. */
    private static List<Place> smallest(List<Mass> dark, List<Mass> light, int count) {
        return Stream.concat(dark.stream(), light.stream())
                .sorted(Comparator.comparingDouble(Mass::share))
                .limit(count)
                .<Place>map(mass -> new Place.Over(mass.region()))
                .toList();
    }
}
