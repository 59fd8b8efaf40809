package umbercard.notes;

/**
 * How far value is trusted when a stick is sought for a color: one number from 0 to 1.
 *
 * <p>A stick is within value if its Munsell value differs by at most 0.5 divided by the trust: half a step at 1, a whole step
 * at 0.5, anything at 0. Sticks within value are ranked by CIEDE2000 with its lightness term multiplied by 1 less the trust:
 * by hue and chroma alone at 1, by the plain formula at 0. That value comes first, and by half a step, is common practice, no
 * source.
 *
 * @param of 0, not more than any difference of color, to 1, value first
 */
public record Trust(double of) {
    /** Value first. */
    public static final Trust VALUE_FIRST = new Trust(1);

    /** The plain order of CIEDE2000. */
    public static final Trust NONE = new Trust(0);

    private static final double HALF_STEP = 0.5;

    public Trust {
        if (!(of >= 0 && of <= 1)) {
            throw new IllegalArgumentException("trust is from 0 to 1: " + of);
        }
    }

    /** How far a stick's value may be off, in steps of Munsell value; infinite without trust. */
    public double reach() {
        return HALF_STEP / of;
    }

    /** What CIEDE2000's lightness term is multiplied by. */
    double ofLightness() {
        return 1 - of;
    }
}
