package umbercard.door;

import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import umbercard.geometry.Eye;
import umbercard.geometry.Masses;
import umbercard.model.Mark;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.notan.Design;
import umbercard.picture.Picture;

/**
 * What a reading reads: a thumbnail of a study, what it comes to, and the framed reference at hand, if there is one.
 *
 * @param stopped whether nobody waits for the answer any more
 * @param counted the masses of the design, counted when they are first asked for, which may take long
 */
public record Plan(
        Study study,
        Thumbnail thumbnail,
        Design design,
        Optional<Picture> reference,
        BooleanSupplier stopped,
        Supplier<Masses> counted) {

    /** A plan whose masses are counted once, however many readings want them. */
    public Plan(Study study, Thumbnail thumbnail, Design design, Optional<Picture> reference, BooleanSupplier stopped) {
        this(study, thumbnail, design, reference, stopped, new Once(design));
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

    private static final class Once implements Supplier<Masses> {
        private final Design design;
        private Optional<Masses> masses = Optional.empty();

        Once(Design design) {
            this.design = design;
        }

        @Override
        public synchronized Masses get() {
            Masses known = masses.orElseGet(() -> Masses.of(design.dark(), design.ratio(), Eye.DEFAULT));
            masses = Optional.of(known);
            return known;
        }
    }
}
