package umbercard.geometry;

import java.util.Arrays;

/**
 * Where a cubic polynomial changes its sign between the parameters 0 and 1. Between its turns it is monotone, so halving
 * the interval finds each change to the last bit. Where it touches zero without changing sign, nothing is found, and at an
 * end that is zero neither; so it cannot be upset by tangents or by curves that start on the line.
 */
final class SignChanges {
    /** What is nearer to zero is zero. */
    private static final double ZERO = 1e-13;

    private final Bernstein cubic;

    SignChanges(Bernstein cubic) {
        this.cubic = cubic;
    }

    /** The parameters, rising; three at most. */
    double[] parameters() {
        double[] found = new double[3];
        int count = 0;
        double sign = 0;
        double from = 0;
        double zero = Double.NaN;
        for (double t : cubic.turns()) {
            double value = cubic.at(t);
            if (Math.abs(value) <= ZERO) {
                zero = Double.isNaN(zero) ? t : zero;
                continue;
            }
            if (sign * value < 0) {
                found[count++] = Double.isNaN(zero) ? cubic.zero(from, t, value > 0) : zero;
            }
            sign = Math.signum(value);
            from = t;
            zero = Double.NaN;
        }
        return Arrays.copyOf(found, count);
    }

    /**
     * -1 or 1 where the polynomial is furthest from zero among the ends and turns between two parameters; 0 if it is zero.
     */
    int side(double from, double to) {
        double furthest = 0;
        for (double t : cubic.turns()) {
            double value = cubic.at(Math.max(from, Math.min(to, t)));
            furthest = Math.abs(value) > Math.abs(furthest) ? value : furthest;
        }
        double middle = cubic.at((from + to) / 2);
        furthest = Math.abs(middle) > Math.abs(furthest) ? middle : furthest;
        return Math.abs(furthest) <= ZERO ? 0 : (int) Math.signum(furthest);
    }
}
