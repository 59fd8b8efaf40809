package umbercard.store;

import java.util.Locale;
import umbercard.words.Message;

/** Which numbers a field takes; the ends count as in. */
enum Range {
    ANY(-Double.MAX_VALUE, Double.MAX_VALUE),
    POSITIVE(Double.MIN_VALUE, Double.MAX_VALUE),
    NOT_NEGATIVE(0, Double.MAX_VALUE),
    SHARE(0, 1),
    SQUINT(0, 0.5),
    VALUE(0, 10),
    TILT(-89, 89),
    PERCENT(0, 100),
    /** A chromaticity coordinate; y divides, so that 0 is none. */
    CHROMATICITY(1e-6, 1),
    LAB(-200, 200),
    /** Places on a frame, with much room around it: beyond, a number is a slip, and overlays lose their exactness. */
    PLACE(-1000, 1000);

    private final double least;
    private final double most;

    Range(double least, double most) {
        this.least = least;
        this.most = most;
    }

    boolean has(double number) {
        return number >= least && number <= most;
    }

    /** What the field should be. */
    Message wanted() {
        return Message.of("store.wanted." + name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }
}
