package umbercard.spectra;

/** What the surface of pastel does to its light: smooth noise, the same at the same place. */
final class Grain {
    private Grain() {}

    /** -1..1, changing over about a unit. */
    static double at(double x, double y) {
        double left = Math.floor(x);
        double top = Math.floor(y);
        double across = x - left;
        double down = y - top;
        double upper = mix(knot(left, top), knot(left + 1, top), across);
        double lower = mix(knot(left, top + 1), knot(left + 1, top + 1), across);
        return mix(upper, lower, down);
    }

    private static double mix(double a, double b, double part) {
        return a + part * (b - a);
    }

    private static double knot(double x, double y) {
        long h = (long) x * 0x9E3779B97F4A7C15L ^ (long) y * 0xC2B2AE3D27D4EB4FL;
        h = (h ^ h >>> 29) * 0xBF58476D1CE4E5B9L;
        h = (h ^ h >>> 32) * 0x94D049BB133111EBL;
        return ((h ^ h >>> 30) >>> 11) / (double) (1L << 52) - 1;
    }
}
