package umbercard.readings.shapes;

import static umbercard.door.Finding.Verdict.HOLDS;
import static umbercard.door.Finding.Verdict.LOOK_AGAIN;

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
 * How many masses are so small that they only fritter the picture away, and how much of it they take up together. Sources:
 * {@code readings.small-pieces.source}.
 */
public final class SmallPieces implements Reading {
    /** What a share may pass a limit by and still be on it. */
    private static final double HAIR = 1e-9;

    private static final Rule RULE = new Rule(
            "small-pieces",
            310,
            Map.of(
                    "most", new Limit(5, "count", 0, 100),
                    "most-share", new Limit(0.03, "share", 0, 0.5),
                    "under", new Limit(0.005, "share", 0.0001, 0.1)),
            Words.say("readings.small-pieces.source"));

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
        List<Mass> small = Stream.concat(masses.dark().stream(), masses.light().stream())
                .filter(mass -> mass.share() < limits.get("under") - HAIR)
                .toList();
        double share = small.stream().mapToDouble(Mass::share).sum();
        boolean again = small.size() > limits.get("most") || share > limits.get("most-share") + HAIR;
        String key = small.isEmpty() ? "none" : again ? "many" : "few";
        return new Finding(
                again ? LOOK_AGAIN : HOLDS,
                List.of(new Figure("pieces", small.size(), "count"), new Figure("share", share, "share")),
                Message.of("readings.small-pieces." + key, small.size(), 100 * share),
                small.stream().<Place>map(mass -> new Place.Over(mass.region())).toList());
    }
}
