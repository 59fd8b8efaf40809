package umbercard.geometry;

/**
 * What an eye makes out when it counts masses; both are preferences.
 *
 * @param width the least width of a neck or gap, as a share of the frame's diagonal, 0 or more; 0 counts connected pieces
 *     however thin what joins or parts them
 * @param leastShare the least area of a mass, as a share of the frame's area, 0 or more; what is smaller counts as a rest
 */
public record Eye(double width, double leastShare) {
    /** 0.3 % of the diagonal, half a millimeter on a card, and a ten-thousandth of the frame: common practice, no source. */
    public static final Eye DEFAULT = new Eye(0.003, 0.0001);

    public Eye {
        if (!(width >= 0) || !(leastShare >= 0) || Double.isInfinite(width)) {
            throw new IllegalArgumentException("what an eye makes out is not negative: " + width + ", " + leastShare);
        }
    }

    /** The least width in units, in a frame {@code ratio} wide and 1 high. */
    public double widthIn(double ratio) {
        return width * Math.hypot(ratio, 1);
    }
}
