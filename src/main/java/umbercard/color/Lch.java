package umbercard.color;

/**
 * CIE LCh(ab) under D65, 2° observer: {@link Lab} in polar form (CIE 15). Lightness {@code l} 0..100, chroma {@code c} 0 or
 * more, hue angle {@code h} in degrees, any turn of which means the same; of a gray it means nothing. Finite.
 */
public record Lch(double l, double c, double h) {
    public Lch {
        Cielab.check(l, c, h);
        if (c < 0) {
            throw new IllegalArgumentException("chroma is 0 or more: " + c);
        }
    }

    /** The same color in rectangular form. */
    public Lab lab() {
        double angle = Math.toRadians(h);
        return new Lab(l, c * StrictMath.cos(angle), c * StrictMath.sin(angle));
    }
}
