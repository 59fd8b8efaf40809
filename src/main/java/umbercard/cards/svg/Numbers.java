package umbercard.cards.svg;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;
import umbercard.geometry.Point;

/** How numbers and words are put into a document, alike on every machine. */
final class Numbers {
    /** A tenth of a micrometer: no printer shows it, and areas keep five digits. */
    static final int DECIMALS = 4;

    private Numbers() {}

    /** The number in plain notation, rounded, without zeros at its end. */
    static String write(double number) {
        BigDecimal rounded = new BigDecimal(number).setScale(DECIMALS, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** The points of a straight-sided line: each as {@code x,y}, with a space between them. */
    static String pairs(List<Point> points) {
        return points.stream().map(p -> write(p.x()) + "," + write(p.y())).collect(Collectors.joining(" "));
    }

    /**
     * The words with everything replaced that XML 1.0 cannot hold (its production 2, Char): control characters become
     * spaces, halves of characters the replacement character.
     */
    static String legible(String words) {
        StringBuilder legible = new StringBuilder(words.length());
        words.codePoints().forEach(c -> {
            if (Character.isISOControl(c)) {
                legible.append(' ');
            } else if (isHalf(c) || c == 0xFFFE || c == 0xFFFF) {
                legible.append('\uFFFD');
            } else {
                legible.appendCodePoint(c);
            }
        });
        return legible.toString();
    }

    private static boolean isHalf(int codePoint) {
        return codePoint >= Character.MIN_SURROGATE && codePoint <= Character.MAX_SURROGATE;
    }
}
