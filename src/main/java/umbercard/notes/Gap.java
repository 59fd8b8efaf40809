package umbercard.notes;

import umbercard.words.Message;

/** Something that the sticks set out lack, with its place on the value strip or the hue ring. */
public sealed interface Gap {
    /** What is missing. */
    Message said();

    /**
     * No value between two.
     *
     * @param from the Munsell value below, 0 where there is no darker stick
     * @param to the Munsell value above, 10 where there is no lighter stick
     */
    record OfValue(Message said, double from, double to) implements Gap {}

    /**
     * Nothing warm, or nothing cool, in a band of values.
     *
     * @param hue the middle of that half of the ring, h*ab in degrees, 0..360; the half reaches 90 degrees to both sides
     */
    record OfWarmth(Message said, Band band, double hue) implements Gap {}
}
