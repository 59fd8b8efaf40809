package umbercard.readings.shapes;

import static umbercard.door.Finding.Verdict.HOLDS;
import static umbercard.door.Finding.Verdict.LOOK_AGAIN;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import umbercard.door.Figure;
import umbercard.door.Finding;
import umbercard.door.Limit;
import umbercard.door.Limits;
import umbercard.door.Place;
import umbercard.door.Plan;
import umbercard.door.Reading;
import umbercard.door.Rule;
import umbercard.geometry.Eye;
import umbercard.geometry.FrameSide;
import umbercard.geometry.Gap;
import umbercard.geometry.Mass;
import umbercard.geometry.NearPair;
import umbercard.geometry.Region;
import umbercard.words.Message;
import umbercard.words.Words;

/**
 * Places where two masses of one value, or a mass and a side of the frame, nearly meet and do not, or where a border runs close
 * along the horizon: the eye catches there. What is nearer than an eye makes out counts as met. Each pair is told once, at its
 * nearest places. Sources: {@code readings.tangents.source}.
 */
public final class Tangents implements Reading {
    private static final int NAMED = 3;

    /** What a share may pass a limit by and still be on it. */
    private static final double HAIR = 1e-9;

    private static final Rule RULE = new Rule(
            "tangents",
            340,
            Map.of(
                    "gap", new Limit(0.012, "of the diagonal", 0.004, 0.1),
                    "least-share", new Limit(0.005, "share", 0.0001, 0.5),
                    "run", new Limit(0.10, "of the diagonal", 0.02, 1)),
            Words.say("readings.tangents.source"));

    @Override
    public Rule rule() {
        return RULE;
    }

    /** A near miss: where to show it, and how far apart. */
    private record Miss(Gap gap, double distance, String kind) {
        Miss(Gap gap, String kind) {
            this(gap, gap.distance(), kind);
        }
    }

    @Override
    public Finding read(Plan plan, Limits limits) {
        if (plan.isBlank()) {
            return Finding.notSet(Message.of("readings.nothing-laid"));
        }
        List<Miss> misses = new ArrayList<>();
        for (List<Mass> masses : List.of(plan.masses().dark(), plan.masses().light())) {
            addAll(regions(masses, limits), plan, limits, misses);
        }
        alongHorizon(plan, limits).ifPresent(misses::add);
        misses.sort(Comparator.comparingDouble(Miss::distance));
        double nearest = misses.isEmpty() ? 0 : misses.get(0).distance / plan.diagonal();
        return new Finding(
                misses.isEmpty() ? HOLDS : LOOK_AGAIN,
                List.of(
                        new Figure("tangents", misses.size(), "count"),
                        new Figure("nearest", nearest, "of the diagonal")),
                misses.isEmpty()
                        ? Message.of("readings.tangents.holds")
                        : Message.of(
                                "readings.tangents." + (misses.size() > 1 ? "many" : misses.get(0).kind),
                                misses.size()),
                misses.stream()
                        .limit(NAMED)
                        .<Place>map(miss -> new Place.Between(miss.gap.from(), miss.gap.to()))
                        .toList());
    }

    private static List<Region> regions(List<Mass> masses, Limits limits) {
        return masses.stream()
                .filter(mass -> mass.share() > limits.get("least-share") + HAIR)
                .map(Mass::region)
                .toList();
    }

    private static void addAll(List<Region> regions, Plan plan, Limits limits, List<Miss> misses) {
        double least = Eye.DEFAULT.widthIn(plan.design().ratio());
        double most = limits.get("gap") * plan.diagonal();
        NearPair.within(regions, most).stream()
                .map(NearPair::gap)
                .filter(gap -> gap.distance() > least)
                .forEach(gap -> misses.add(new Miss(gap, "masses")));
        for (Region region : regions) {
            for (FrameSide side : FrameSide.values()) {
                Gap.toSide(region, side, plan.design().ratio())
                        .filter(gap -> gap.distance() > least && gap.distance() <= most)
                        .ifPresent(gap -> misses.add(new Miss(gap, "frame")));
            }
        }
    }

    /** Where borders other than the land edge run along the horizon, from the leftmost such place to the rightmost. */
    private static Optional<Miss> alongHorizon(Plan plan, Limits limits) {
        return plan.thumbnail().horizon().flatMap(horizon -> {
            Along along = new Along(plan, horizon, limits.get("gap"), limits.get("run"));
            return along.found().map(gap -> new Miss(gap, along.nearest(), "horizon"));
        });
    }
}
