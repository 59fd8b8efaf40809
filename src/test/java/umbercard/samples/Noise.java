package umbercard.samples;

/**
 * Gradient noise over the plane (K. Perlin, "Improving Noise", SIGGRAPH 2002), with a hash of the lattice in place of a
 * table: seeded, without period that shows, the same on every machine.
 */
final class Noise {
    private final int seed;

    Noise(int seed) {
        this.seed = seed;
    }

    /** One octave, about -1..1, 0 on average. */
    double at(double x, double y) {
        int i = (int) Math.floor(x);
        int j = (int) Math.floor(y);
        double fx = x - i;
        double fy = y - j;
        double u = fade(fx);
        double v = fade(fy);
        double top = mix(slope(i, j, fx, fy), slope(i + 1, j, fx - 1, fy), u);
        double bottom = mix(slope(i, j + 1, fx, fy - 1), slope(i + 1, j + 1, fx - 1, fy - 1), u);
        return 1.4 * mix(top, bottom, v);
    }

    /** Several octaves, each twice as fine and half as strong as the one before, about -1..1. */
    double at(double x, double y, int octaves) {
        double sum = 0;
        double strength = 1;
        double all = 0;
        double fine = 1;
        for (int i = 0; i < octaves; i++) {
            sum += strength * at(x * fine + 17.3 * i, y * fine - 9.1 * i);
            all += strength * strength;
            strength *= 0.5;
            fine *= 2.03;
        }
        return sum / Math.sqrt(all);
    }

    /** A number 0..1 that belongs to a cell. */
    double cell(int i, int j) {
        return (hash(i, j) >>> 8) / (double) (1 << 24);
    }

    private double slope(int i, int j, double x, double y) {
        return switch (hash(i, j) >>> 29) {
            case 0 -> x + y;
            case 1 -> x - y;
            case 2 -> y - x;
            case 3 -> -x - y;
            case 4 -> 1.41 * x;
            case 5 -> -1.41 * x;
            case 6 -> 1.41 * y;
            default -> -1.41 * y;
        };
    }

    private int hash(int i, int j) {
        int h = seed * 0x9e3779b1 + i * 0x85ebca6b + j * 0xc2b2ae35;
        h = (h ^ h >>> 15) * 0x2c1b3c6d;
        h = (h ^ h >>> 12) * 0x297a2d39;
        return h ^ h >>> 15;
    }

    private static double fade(double t) {
        return t * t * t * (t * (6 * t - 15) + 10);
    }

    static double mix(double a, double b, double share) {
        return a + share * (b - a);
    }

    /** 0 at or before {@code from}, 1 at or after {@code to}, smooth between; {@code from} may lie after {@code to}. */
    static double step(double from, double to, double x) {
        double t = Math.min(1, Math.max(0, (x - from) / (to - from)));
        return t * t * (3 - 2 * t);
    }
}
