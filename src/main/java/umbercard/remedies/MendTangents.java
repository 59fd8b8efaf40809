package umbercard.remedies;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import umbercard.door.Figure;
import umbercard.door.Finding;
import umbercard.door.Place;
import umbercard.door.Remedied;
import umbercard.door.Remedy;
import umbercard.door.Trial;
import umbercard.geometry.Gap;
import umbercard.geometry.Region;
import umbercard.readings.shapes.Tangents;
import umbercard.words.Message;

/** Mends near misses one after another, the worst first, for as long as there are fewer of them for it. */
abstract class MendTangents implements Remedy {
    private static final int MOST = 40;

    private static final Tangents READING = new Tangents();

    @Override
    public Set<String> mends() {
        return Set.of(READING.id());
    }

    /** A near miss: the value of what nearly meets, the nearest places, and how near is too near, in units. */
    record Miss(Value value, Gap gap, double reach) {}

    /** What is to get a value so that the near miss is none any more; empty where it cannot be helped so. */
    abstract Optional<Region> patch(Draft draft, Miss miss);

    /** The value that the patches of a near miss get. */
    abstract Value given(Miss miss);

    @Override
    public Optional<Remedied> tried(Trial trial) {
        Draft draft = Draft.of(trial);
        int mended = 0;
        while (mended < MOST && !trial.plan().stopped().getAsBoolean()) {
            Optional<Draft> better = better(draft);
            if (better.isEmpty()) {
                break;
            }
            draft = better.get();
            mended++;
        }
        int count = mended;
        return Optional.of(draft)
                .filter(after -> count > 0)
                .map(after -> new Remedied(
                        Message.of("remedies." + id(), count),
                        Message.of("remedies." + id() + ".called"),
                        after.plan().thumbnail(),
                        List.of()));
    }

    /** With one near miss mended, the worst that can be without making another. */
    private Optional<Draft> better(Draft draft) {
        Finding found = draft.read(READING);
        double reach =
                draft.limits().apply(READING.rule()).get("gap") * draft.plan().diagonal();
        for (Place place : found.places()) {
            Optional<Draft> tried = miss(draft, place, reach)
                    .flatMap(miss -> patch(draft, miss).map(region -> draft.with(given(miss), List.of(region))))
                    .filter(after -> count(after.read(READING)) < count(found));
            if (tried.isPresent()) {
                return tried;
            }
        }
        return Optional.empty();
    }

    private static double count(Finding found) {
        return found.figures().stream().findFirst().map(Figure::value).orElse(0.0);
    }

    /** What lies in the middle of a gap has the other value. A run along the horizon, longer than any gap, is none. */
    private static Optional<Miss> miss(Draft draft, Place place, double reach) {
        return Optional.of(place)
                .filter(Place.Between.class::isInstance)
                .map(Place.Between.class::cast)
                .map(between -> new Gap(between.from(), between.to()))
                .filter(gap -> gap.distance() <= reach && gap.distance() > 0)
                .map(gap -> {
                    boolean onDark =
                            draft.plan().design().dark().contains(gap.from().toward(gap.to(), 0.5));
                    return new Miss(onDark ? Value.LIGHT : Value.DARK, gap, reach);
                });
    }
}
