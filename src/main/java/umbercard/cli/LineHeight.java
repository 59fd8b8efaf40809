package umbercard.cli;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.TypeConversionException;
import umbercard.words.Words;

/**
 * How high a line is to lie above the bottom edge, as it is written in a call: {@code 2/3}, {@code 0.618}, {@code 60%} or
 * {@code nearest}.
 *
 * @param share of the frame's height, between 0 and 1 and neither; empty for the nearest named fraction
 */
record LineHeight(Optional<Double> share) {
    /** Until a call says otherwise. */
    static final LineHeight NEAREST = new LineHeight(Optional.empty());

    private static final String NEAREST_WRITTEN = "nearest";
    private static final Pattern FRACTION = Pattern.compile("(\\d{1,3})/(\\d{1,3})");
    private static final Pattern NUMBER = Pattern.compile("(\\d{0,3}(?:\\.\\d{1,9})?)(%?)");

    static LineHeight parse(String written) {
        if (written.equals(NEAREST_WRITTEN)) {
            return NEAREST;
        }
        double share = number(written);
        if (share > 0 && share < 1) {
            return new LineHeight(Optional.of(share));
        }
        throw new TypeConversionException(Words.say("cli.wrong.line-height", written));
    }

    /** Not a number where none is written. */
    private static double number(String written) {
        Matcher fraction = FRACTION.matcher(written);
        if (fraction.matches()) {
            return Double.parseDouble(fraction.group(1)) / Double.parseDouble(fraction.group(2));
        }
        Matcher number = NUMBER.matcher(written);
        if (!number.matches() || number.group(1).isEmpty()) {
            return Double.NaN;
        }
        return Double.parseDouble(number.group(1)) / (number.group(2).isEmpty() ? 1 : 100);
    }
}
