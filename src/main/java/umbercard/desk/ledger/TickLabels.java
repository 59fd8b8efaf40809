package umbercard.desk.ledger;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.ToIntFunction;
import umbercard.readings.Fraction;
import umbercard.words.Words;

/** Which ticks of a rule bear a label: as many as stand clear of each other, the plainest fractions first. */
final class TickLabels {
    /** In the order in which they get a label. */
    private static final List<Fraction> PLAINEST = List.of(
            Fraction.HALF,
            Fraction.THIRD,
            Fraction.TWO_THIRDS,
            Fraction.QUARTER,
            Fraction.THREE_QUARTERS,
            Fraction.LESSER_PART,
            Fraction.GREATER_PART);

    private TickLabels() {}

    /** The label of a fraction, short enough for a rule. */
    static String words(Fraction fraction) {
        return Words.say(
                "ledger.fraction." + fraction.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    /**
     * The fractions whose labels, each centered under its tick, leave at least {@code gap} between them.
     *
     * @param length of the rule, in the unit of {@code width}
     * @param width of a label
     */
    static Set<Fraction> clear(int length, int gap, ToIntFunction<String> width) {
        Set<Fraction> labelled = EnumSet.noneOf(Fraction.class);
        List<double[]> taken = new ArrayList<>();
        for (Fraction fraction : PLAINEST) {
            double half = width.applyAsInt(words(fraction)) / 2.0;
            double left = fraction.share() * length - half;
            double right = fraction.share() * length + half;
            if (taken.stream().allMatch(other -> right + gap <= other[0] || left - gap >= other[1])) {
                labelled.add(fraction);
                taken.add(new double[] {left, right});
            }
        }
        return labelled;
    }
}
