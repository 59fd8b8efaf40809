package umbercard.color;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The numbering a painter was taught for values. It changes how a value is shown and nothing else: values are kept, compared
 * and written to files as Munsell's, 0 black to 10 white. Each scale runs evenly from Munsell's black to its white, so that no
 * two values are shown alike that differ; that 1 is black and 10 or 9 white, or the other way round, is common practice, no
 * source. With names, the nearest of {@link RossValue} is shown.
 */
public enum ValueScale {
    /** 0 black to 10 white: Munsell's own. */
    ZERO_TO_TEN(0, 10),
    /** 0 white to 10 black. */
    TEN_TO_ZERO(10, 0),
    /** 1 black to 10 white. */
    ONE_TO_TEN(1, 10),
    /** 1 white to 10 black. */
    TEN_TO_ONE(10, 1),
    /** 1 black to 9 white. */
    ONE_TO_NINE(1, 9),
    /** 1 white to 9 black. */
    NINE_TO_ONE(9, 1),
    /** Ross's nine names. */
    NAMES(1, 9);

    /** The scale that data and scripts are in. */
    public static final ValueScale MUNSELL = ZERO_TO_TEN;

    private static final double MOST = 10;
    private static final List<RossValue> DARK_FIRST = List.of(RossValue.values());

    private final int black;
    private final int white;

    ValueScale(int black, int white) {
        this.black = black;
        this.white = white;
    }

    /** The scale of that key, if there is one. */
    public static Optional<ValueScale> find(String key) {
        return Stream.of(values()).filter(scale -> scale.key().equals(key)).findFirst();
    }

    /** The key of its words, for example {@code one-to-nine}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Whether its numbers grow from white to black. */
    public boolean isLightFirst() {
        return white < black;
    }

    /** The number shown for a Munsell value; beyond 0..10 that of the end. With names, their place counted from 1, black. */
    public double number(double value) {
        return black + (white - black) * within(value) / MOST;
    }

    /** The Munsell value of a number of this scale; beyond the scale that of the end. */
    public double value(double number) {
        return within(MOST * (number - black) / (white - black));
    }

    /** The nearest name, if this scale has names. */
    public Optional<RossValue> name(double value) {
        return this == NAMES ? Optional.of(DARK_FIRST.get((int) Math.round(number(value)) - 1)) : Optional.empty();
    }

    /** The Munsell values of its whole numbers, from black to white. */
    public List<Double> marks() {
        int steps = Math.abs(white - black);
        return IntStream.rangeClosed(0, steps).mapToObj(i -> MOST * i / steps).toList();
    }

    private static double within(double value) {
        return Math.min(MOST, Math.max(0, value));
    }
}
