package umbercard.door;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import umbercard.geometry.Eye;
import umbercard.geometry.Masses;
import umbercard.model.Mark;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.notan.Design;
import umbercard.picture.MainColor;
import umbercard.picture.Picture;
import umbercard.zones.ZoneMap;

/**
 * What a reading reads: a thumbnail of a study, what it comes to, and the framed reference at hand, if there is one.
 *
 * @param stopped whether nobody waits for the answer any more
 * @param counted the masses of the design, counted when they are first asked for, which may take long
 * @param mapped where the zones lie, found when it is first asked for
 * @param colored the reference's main colors by the id of the zone they lie in, the largest share first, sampled when they
 *     are first asked for; empty without a reference at hand
 */
public record Plan(
        Study study,
        Thumbnail thumbnail,
        Design design,
        Optional<Picture> reference,
        BooleanSupplier stopped,
        Supplier<Masses> counted,
        Supplier<ZoneMap> mapped,
        Supplier<Map<String, List<MainColor>>> colored) {

    /** A plan whose masses are counted and whose zones are mapped once, however many readings want them; without colors. */
    public Plan(Study study, Thumbnail thumbnail, Design design, Optional<Picture> reference, BooleanSupplier stopped) {
        this(
                study,
                thumbnail,
                design,
                reference,
                stopped,
                new Once<>(() -> Masses.of(design.dark(), design.ratio(), Eye.DEFAULT)),
                new Once<>(() -> ZoneMap.of(study, thumbnail)),
                Map::of);
    }

    /** The same with the reference's colors in the zones, sampled once. */
    public Plan withColors(Supplier<Map<String, List<MainColor>>> sampled) {
        return new Plan(study, thumbnail, design, reference, stopped, counted, mapped, new Once<>(sampled));
    }

    /** The same with masses counted by another. */
    public Plan withMasses(Supplier<Masses> others) {
        return new Plan(study, thumbnail, design, reference, stopped, others, mapped, colored);
    }

    /** Whether nothing is laid or lifted yet. */
    public boolean isBlank() {
        return thumbnail.marks().stream().allMatch(Mark::hidden);
    }

    /** The frame's diagonal, in units of its height. */
    public double diagonal() {
        return Math.hypot(design.ratio(), 1);
    }

    /** The masses of dark and light as an eye counts them; counting them is slow, whether the plan is stopped or not. */
    public Masses masses() {
        return counted.get();
    }

    /** Where the zones lie on the thumbnail. */
    public ZoneMap zones() {
        return mapped.get();
    }

    /** The reference's main colors by the id of the zone they lie in; no entry for a zone without colors. */
    public Map<String, List<MainColor>> zoneColors() {
        return colored.get();
    }

    private static final class Once<T> implements Supplier<T> {
        private final Supplier<T> found;
        private Optional<T> known = Optional.empty();

        Once(Supplier<T> found) {
            this.found = found;
        }

        @Override
        public synchronized T get() {
            T one = known.orElseGet(found);
            known = Optional.of(one);
            return one;
        }
    }
}
