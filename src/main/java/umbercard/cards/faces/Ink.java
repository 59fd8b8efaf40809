package umbercard.cards.faces;

import umbercard.color.Lab;
import umbercard.color.MunsellValue;

/** The inks of a card: near blacks and grays, so that nothing but the sticks has a color. */
final class Ink {
    /** The dark of a thumbnail. */
    static final Lab DARK = Lab.ofSrgb(0x141414);

    /** What is not printed on. */
    static final Lab PAPER = Lab.ofSrgb(0xffffff);

    /** Words to be read first. */
    static final Lab WORDS = Lab.ofSrgb(0x1c1c1c);

    /** Words to be read second: 7 : 1 against the paper. */
    static final Lab QUIET = Lab.ofSrgb(0x595959);

    /** Borders. */
    static final Lab HAIRLINE = Lab.ofSrgb(0x9a9a9a);

    /** The middle gray of the Munsell scale: a light stick shows on it that vanishes on white paper. */
    static final Lab VALUE_FIVE = new Lab(116 * StrictMath.cbrt(MunsellValue.luminance(5)) - 16, 0, 0);

    /** How wide a border is, in millimeters. */
    static final double HAIR = 0.2;

    private Ink() {}
}
