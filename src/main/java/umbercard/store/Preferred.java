package umbercard.store;

import java.util.prefs.Preferences;
import umbercard.color.ValueScale;

/**
 * What the painter prefers, whatever the study: kept for this user of this machine where Java keeps preferences. What cannot be
 * read there, or was written by another version, is as if it had never been chosen.
 */
public final class Preferred {
    private static final String VALUES = "values";

    private Preferred() {}

    /** The numbering of values; Munsell's until one is chosen. */
    public static ValueScale values() {
        return ValueScale.find(node().get(VALUES, "")).orElse(ValueScale.MUNSELL);
    }

    /** Keeps the numbering of values for this and every later run. */
    public static void keepValues(ValueScale scale) {
        node().put(VALUES, scale.key());
    }

    private static Preferences node() {
        return Preferences.userRoot().node("umbercard");
    }
}
