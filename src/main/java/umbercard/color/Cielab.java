package umbercard.color;

/** CIE 1976 L*a*b* under any white (CIE 15, with the exact fractions 216/24389 and 24389/27). */
final class Cielab {
    static final double EPSILON = 216.0 / 24389;
    static final double KAPPA = 24389.0 / 27;

    private Cielab() {}

    static void check(double l, double a, double b) {
        if (!Double.isFinite(l) || !Double.isFinite(a) || !Double.isFinite(b)) {
            throw new IllegalArgumentException("a color has finite coordinates: " + l + ", " + a + ", " + b);
        }
    }

    /** L*, a*, b* in this order. */
    static Xyz of(Xyz color, WhitePoint white) {
        Xyz reference = white.xyz();
        double fx = f(color.x() / reference.x());
        double fy = f(color.y());
        double fz = f(color.z() / reference.z());
        return new Xyz(116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz));
    }

    static Xyz xyz(double l, double a, double b, WhitePoint white) {
        Xyz reference = white.xyz();
        double fy = (l + 16) / 116;
        return new Xyz(reference.x() * inverse(fy + a / 500), inverse(fy), reference.z() * inverse(fy - b / 200));
    }

    static double lightness(double luminance) {
        return 116 * f(luminance) - 16;
    }

    static double luminance(double lightness) {
        return inverse((lightness + 16) / 116);
    }

    private static double f(double t) {
        return t > EPSILON ? StrictMath.cbrt(t) : (KAPPA * t + 16) / 116;
    }

    private static double inverse(double f) {
        double cube = f * f * f;
        return cube > EPSILON ? cube : (116 * f - 16) / KAPPA;
    }
}
