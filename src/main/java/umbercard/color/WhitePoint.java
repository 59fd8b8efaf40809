package umbercard.color;

/**
 * The white that colors are seen or measured against, as CIE 1931 chromaticity {@code x}, {@code y}, 2° observer; both above
 * 0, their sum below 1. The named ones have the chromaticities that CIE 15 publishes, to the digits in common use.
 */
public record WhitePoint(double x, double y) {
    /** Daylight of 6504 K, which sRGB and the program's {@link Lab} are under. */
    public static final WhitePoint D65 = new WhitePoint(0.3127, 0.3290);

    /** Daylight of 5003 K, under which printed and measured color is told. */
    public static final WhitePoint D50 = new WhitePoint(0.3457, 0.3585);

    /** Average daylight as it was defined in 1931, which the Munsell renotation is under. */
    public static final WhitePoint C = new WhitePoint(0.31006, 0.31616);

    /** Lamplight of 2856 K; the chromaticity is from memory of CIE 15. */
    public static final WhitePoint A = new WhitePoint(0.44757, 0.40745);

    /** The Bradford matrix (K. M. Lam 1985; digits as ICC.1 prints them). */
    private static final Matrix CONES =
            new Matrix(0.8951, 0.2664, -0.1614, -0.7502, 1.7135, 0.0367, 0.0389, -0.0685, 1.0296);

    private static final Matrix FROM_CONES = CONES.inverse();

    public WhitePoint {
        if (!(x > 0) || !(y > 0) || !(x + y < 1)) {
            throw new IllegalArgumentException("no white: " + x + ", " + y);
        }
    }

    /** Its tristimulus values, Y at 1. */
    public Xyz xyz() {
        return new Xyy(x, y, 1).xyz();
    }

    /**
     * The color that looks under another white as this one does under this white: linear Bradford adaptation, as ICC.1
     * prescribes it, complete (no mixing of the two whites). This white goes to the other exactly.
     */
    public Xyz adapt(Xyz color, WhitePoint to) {
        if (equals(to)) {
            return color;
        }
        Xyz cones = CONES.times(color);
        Xyz here = CONES.times(xyz());
        Xyz there = CONES.times(to.xyz());
        return FROM_CONES.times(
                cones.x() * there.x() / here.x(), cones.y() * there.y() / here.y(), cones.z() * there.z() / here.z());
    }
}
