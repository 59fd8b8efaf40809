package umbercard.door;

import java.util.Set;
import umbercard.geometry.Point;

/**
 * One thing the painter's hand did.
 *
 * @param at in frame units; may lie outside the frame
 * @param pixel the size of one screen pixel in frame units
 * @param key for {@link Act#KEY}: a lower-case letter or a name such as {@code enter}; otherwise empty
 * @param clicks how many clicks this press or release counts as
 * @param millis a time that only grows
 */
public record Gesture(Act act, Point at, double pixel, String key, Set<With> with, int clicks, long millis) {
    public Gesture {
        with = Set.copyOf(with);
    }

    /** The kinds of gesture. */
    public enum Act {
        HOVER,
        PRESS,
        DRAG,
        RELEASE,
        KEY,
        ESCAPE
    }

    /** What is held down besides. */
    public enum With {
        SHIFT,
        ALT,
        SHORTCUT,
        SECOND_BUTTON
    }
}
