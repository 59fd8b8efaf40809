package umbercard.desk.box;

import umbercard.model.Stick;

/**
 * How a stick stands in the box.
 *
 * @param words all of it, as a screen reader says it
 * @param onCard whether a strip of it is on the color card
 * @param setOut whether it is set out for this painting
 * @param sought whether it is among those that are looked for; all are while nothing is
 */
record Standing(String words, boolean onCard, boolean setOut, boolean sought, Stick.State state) {
    /** Before anything is known of it. */
    static final Standing UNKNOWN = new Standing("", false, false, true, Stick.State.OWNED);
}
