package umbercard.notes;

import java.util.Locale;

/** Dark, middle and light: under Munsell value 4, from there to 7, and from 7. Common practice, no source. */
public enum Band {
    DARK(0, 4),
    MIDDLE(4, 7),
    LIGHT(7, 10);

    private final double from;
    private final double to;

    Band(double from, double to) {
        this.from = from;
        this.to = to;
    }

    static Band of(double value) {
        return value < DARK.to ? DARK : value < MIDDLE.to ? MIDDLE : LIGHT;
    }

    /** The Munsell value it begins at. */
    public double from() {
        return from;
    }

    /** The Munsell value it ends at. */
    public double to() {
        return to;
    }

    String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
