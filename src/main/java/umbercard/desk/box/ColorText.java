package umbercard.desk.box;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import umbercard.color.Lab;

/** A color as a painter types it: {@code #8a6f52} in sRGB, or L*, a*, b* under D65 as three numbers. */
final class ColorText {
    private static final Pattern BETWEEN = Pattern.compile("\\s*[,;\\s]\\s*");

    /** The most that a* and b* can be either way. */
    private static final double MOST = 150;

    private ColorText() {}

    /** The color in the words, or nothing. */
    static Optional<Lab> read(String words) {
        String typed = words.strip();
        Optional<Lab> hex = Lab.ofHex(typed.startsWith("#") ? typed : "#" + typed);
        if (hex.isPresent()) {
            return hex;
        }
        String[] parts = BETWEEN.split(typed);
        try {
            double[] lab = Arrays.stream(parts).mapToDouble(Double::parseDouble).toArray();
            boolean within = lab.length == 3
                    && lab[0] >= 0
                    && lab[0] <= 100
                    && Math.abs(lab[1]) <= MOST
                    && Math.abs(lab[2]) <= MOST;
            return within ? Optional.of(new Lab(lab[0], lab[1], lab[2])) : Optional.empty();
        } catch (NumberFormatException notANumber) {
            return Optional.empty();
        }
    }

    /** The color as L*, a*, b*, each to one place. */
    static String write(Lab color) {
        return String.format(Locale.ROOT, "%.1f, %.1f, %.1f", color.l() + 0.0, color.a() + 0.0, color.b() + 0.0);
    }
}
