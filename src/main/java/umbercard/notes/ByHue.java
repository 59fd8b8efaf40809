package umbercard.notes;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import umbercard.color.Ciede2000;
import umbercard.color.Lab;
import umbercard.model.Stick;
import umbercard.model.Study;

/** Finds sticks by hue and chroma, once their values are settled; the sticks set out come before the rest of the box. */
public final class ByHue {
    /** How far hue and chroma may be off, as CIEDE2000 without its lightness term, for a stick still to stand for a color: common practice, no source. */
    public static final double NEAR = 10;

    private ByHue() {}

    /** How two colors differ in hue and chroma alone: CIEDE2000 without its lightness term, 0 or more. */
    public static double difference(Lab one, Lab other) {
        Ciede2000.Parts parts = Ciede2000.parts(one, other);
        return new Ciede2000.Parts(0, parts.chroma(), parts.hue(), parts.turning()).total();
    }

    /** How far one hue lies from another round the circle, 0..180 degrees. */
    public static double apart(Lab one, Lab other) {
        double turn = Math.abs(one.hue() - other.hue());
        return Math.min(turn, 360 - turn);
    }

    /** The stick nearest to a color in hue and chroma among those that may be taken; the first of equally near ones. */
    public static Optional<Stick> nearest(List<Stick> sticks, Lab wanted, Predicate<Stick> mayBe) {
        return sticks.stream()
                .filter(mayBe)
                .min(Comparator.comparingDouble(stick -> difference(wanted, stick.color())));
    }

    /** The same among the sticks set out that the painter has; where none of them may be taken, among those of the box. */
    public static Optional<Stick> nearest(Study study, Lab wanted, Predicate<Stick> mayBe) {
        return nearest(AtHand.of(study.setOut()).sticks(), wanted, mayBe)
                .or(() -> nearest(inBox(study), wanted, mayBe));
    }

    /** The sticks of the study's box that the painter has; none without a box. */
    public static List<Stick> inBox(Study study) {
        return study.box().map(box -> AtHand.of(box.sticks()).sticks()).orElse(List.of());
    }
}
