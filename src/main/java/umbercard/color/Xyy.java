package umbercard.color;

/**
 * A color as tables of measured color print it: CIE 1931 chromaticity {@code x}, {@code y} and relative luminance, 0 black to
 * 1 white (tables print Y in percent). Finite; {@code y} is above 0.
 *
 * @param luminance Y, 0..1
 */
public record Xyy(double x, double y, double luminance) {
    public Xyy {
        if (!Double.isFinite(x) || !Double.isFinite(y) || y <= 0 || !Double.isFinite(luminance)) {
            throw new IllegalArgumentException("no chromaticity and luminance: " + x + ", " + y + ", " + luminance);
        }
    }

    /** The tristimulus values (CIE 15). */
    public Xyz xyz() {
        return new Xyz(x / y * luminance, luminance, (1 - x - y) / y * luminance);
    }
}
