package umbercard.readings;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import umbercard.words.Message;

/**
 * A part of a whole that the trade has a name for. Quarter and three quarters: J. Reynolds, notes to Du Fresnoy, 1783; one
 * and two thirds: J. T. Smith, Remarks on Rural Scenery, 1797; the parts of the cut in extreme and mean ratio: Euclid, Elements
 * VI.30, whose use for pictures is common practice.
 */
public enum Fraction {
    QUARTER(1.0 / 4),
    THIRD(1.0 / 3),
    LESSER_PART((3 - Math.sqrt(5)) / 2),
    HALF(1.0 / 2),
    GREATER_PART((Math.sqrt(5) - 1) / 2),
    TWO_THIRDS(2.0 / 3),
    THREE_QUARTERS(3.0 / 4);

    private final double share;

    Fraction(double share) {
        this.share = share;
    }

    /** Its size, 0..1. */
    public double share() {
        return share;
    }

    /** What the painter calls it. */
    public Message words() {
        return Message.of("readings.fraction." + name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    /**
     * The one that is nearest to a share; of two equally near ones the first in {@code among}.
     *
     * @param among at least one
     */
    public static Fraction nearest(double share, Collection<Fraction> among) {
        return among.stream()
                .min(Comparator.comparingDouble(fraction -> Math.abs(fraction.share - share)))
                .orElseThrow();
    }
}
