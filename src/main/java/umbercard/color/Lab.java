package umbercard.color;

/**
 * A color in CIE 1976 L*a*b* under D65 (x 0.3127, y 0.3290), the 2° observer: lightness {@code l} 0..100, {@code a} and
 * {@code b} roughly -128..128. Finite, otherwise unbounded: a stick may lie outside the screen's gamut.
 *
 * <p>Source: CIE 15 with the exact fractions 216/24389 and 24389/27.
 */
public record Lab(double l, double a, double b) {
    static final double EPSILON = 216.0 / 24389;
    static final double KAPPA = 24389.0 / 27;

    public Lab {
        if (!Double.isFinite(l) || !Double.isFinite(a) || !Double.isFinite(b)) {
            throw new IllegalArgumentException("a color has finite coordinates: " + l + ", " + a + ", " + b);
        }
    }

    /** The color of an 8-bit sRGB triple, packed as {@code 0xRRGGBB}; higher bits are ignored. */
    public static Lab ofSrgb(int rgb) {
        return ofXyz(Srgb.toXyz(
                Srgb.decode((rgb >> 16 & 0xff) / 255.0),
                Srgb.decode((rgb >> 8 & 0xff) / 255.0),
                Srgb.decode((rgb & 0xff) / 255.0)));
    }

    /** The color of linear light in sRGB's primaries, each 0..1. */
    public static Lab ofLinear(double red, double green, double blue) {
        return ofXyz(Srgb.toXyz(red, green, blue));
    }

    /** L*, 0..100, of a relative luminance 0..1. */
    public static double lightness(double luminance) {
        return 116 * f(luminance) - 16;
    }

    /** From tristimulus values under D65, white at Y = 1. */
    static Lab ofXyz(double[] xyz) {
        double fx = f(xyz[0] / Srgb.WHITE[0]);
        double fy = f(xyz[1] / Srgb.WHITE[1]);
        double fz = f(xyz[2] / Srgb.WHITE[2]);
        return new Lab(116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz));
    }

    /** Tristimulus values under D65, white at Y = 1. */
    double[] xyz() {
        double fy = (l + 16) / 116;
        return new double[] {
            Srgb.WHITE[0] * inverse(fy + a / 500), Srgb.WHITE[1] * inverse(fy), Srgb.WHITE[2] * inverse(fy - b / 200)
        };
    }

    /** The nearest 8-bit sRGB triple, packed as {@code 0xRRGGBB}; each channel is clipped to the gamut by itself. */
    public int srgb() {
        double[] linear = Srgb.toLinear(xyz());
        return Srgb.byteOf(linear[0]) << 16 | Srgb.byteOf(linear[1]) << 8 | Srgb.byteOf(linear[2]);
    }

    /** {@link #srgb()} written as {@code #rrggbb}. */
    public String hex() {
        return String.format("#%06x", srgb());
    }

    /** Relative luminance Y, 0 black to 1 white. */
    public double luminance() {
        return inverse((l + 16) / 116);
    }

    /** C*ab: the distance from gray. */
    public double chroma() {
        return Math.hypot(a, b);
    }

    /** h*ab in degrees, 0 up to but not including 360; 0 for an exact gray. */
    public double hue() {
        double degrees = Math.toDegrees(StrictMath.atan2(b, a));
        return degrees < 0 ? degrees + 360 : degrees;
    }

    /** Munsell value, 0 black to 10 white, from the luminance; see {@link MunsellValue}. */
    public double value() {
        return MunsellValue.ofLuminance(luminance());
    }

    private static double f(double t) {
        return t > EPSILON ? StrictMath.cbrt(t) : (KAPPA * t + 16) / 116;
    }

    private static double inverse(double f) {
        double cube = f * f * f;
        return cube > EPSILON ? cube : (116 * f - 16) / KAPPA;
    }
}
