package umbercard.store;

import java.util.prefs.Preferences;
import umbercard.color.ValueScale;

/**
 * What the painter prefers, whatever the study: kept for this user of this machine where Java keeps preferences. What cannot be
 * read there, or was written by another version, is as if it had never been chosen.
 */
public final class Preferred {
    private static final String VALUES = "values";
    private static final String TRUST = "trust-in-value";

    private Preferred() {}

    /** The numbering of values; Munsell's until one is chosen. */
    public static ValueScale values() {
        return ValueScale.find(node().get(VALUES, "")).orElse(ValueScale.MUNSELL);
    }

    /** Keeps the numbering of values for this and every later run. */
    public static void keepValues(ValueScale scale) {
        node().put(VALUES, scale.key());
    }

    /** How far value is trusted when a stick is sought for a color, 0..1; 1, value first, until it is chosen. */
    public static double trust() {
        double kept = node().getDouble(TRUST, 1);
        return kept >= 0 && kept <= 1 ? kept : 1;
    }

    /** Keeps how far value is trusted, 0..1. */
    public static void keepTrust(double trust) {
        node().putDouble(TRUST, trust);
    }

    private static Preferences node() {
        return Preferences.userRoot().node("umbercard");
    }
}
