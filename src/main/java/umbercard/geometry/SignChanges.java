package umbercard.geometry;

import java.util.Arrays;

/**
 * Where a cubic polynomial in Bernstein form changes its sign between the parameters 0 and 1. Between its turns it is
 * monotone, so halving the interval finds each change to the last bit. Where it touches zero without changing sign, nothing is
 * found, and at an end that is zero neither; so it cannot be upset by tangents or by curves that start on the line.
 */
final class SignChanges {
    /** What is nearer to zero is zero. */
    private static final double ZERO = 1e-13;

    private final double a;
    private final double b;
    private final double c;
    private final double d;

    /** @param a to {@code d} the Bernstein coefficients */
    SignChanges(double a, double b, double c, double d) {
        this.a = a;
        this.b = b;
        this.c = c;
        this.d = d;
    }

    /** The parameters, rising; three at most. */
    double[] parameters() {
        double[] steps = steps();
        double[] found = new double[3];
        int count = 0;
        double sign = 0;
        double from = 0;
        double zero = Double.NaN;
        for (double t : steps) {
            double value = value(t);
            if (Math.abs(value) <= ZERO) {
                zero = Double.isNaN(zero) ? t : zero;
                continue;
            }
            if (sign * value < 0) {
                found[count++] = Double.isNaN(zero) ? between(from, t) : zero;
            }
            sign = Math.signum(value);
            from = t;
            zero = Double.NaN;
        }
        return Arrays.copyOf(found, count);
    }

    /** -1 or 1 where the polynomial is furthest from zero among the ends and turns between two parameters; 0 if it is zero. */
    int side(double from, double to) {
        double furthest = 0;
        for (double t : steps()) {
            double value = value(Math.max(from, Math.min(to, t)));
            furthest = Math.abs(value) > Math.abs(furthest) ? value : furthest;
        }
        double middle = value((from + to) / 2);
        furthest = Math.abs(middle) > Math.abs(furthest) ? middle : furthest;
        return Math.abs(furthest) <= ZERO ? 0 : (int) Math.signum(furthest);
    }

    private double value(double t) {
        double s = 1 - t;
        return s * s * s * a + 3 * s * s * t * b + 3 * s * t * t * c + t * t * t * d;
    }

    /** 0, the turns between 0 and 1, and 1, rising. */
    private double[] steps() {
        double p = b - a;
        double q = c - b;
        double r = d - c;
        double square = p - 2 * q + r;
        double half = q - p;
        double root = half * half - square * p;
        if (root < 0) {
            return new double[] {0, 1};
        }
        // The form that does not cancel (Press et al. 2007, "Numerical Recipes", 5.6).
        double sum = -(half + Math.copySign(Math.sqrt(root), half));
        return Arrays.stream(new double[] {0, sum / square, p / sum, 1})
                .filter(t -> t >= 0 && t <= 1)
                .sorted()
                .toArray();
    }

    private double between(double from, double to) {
        double low = from;
        double high = to;
        boolean rising = value(to) > 0;
        double middle = (low + high) / 2;
        while (low < middle && middle < high) {
            if (value(middle) > 0 == rising) {
                high = middle;
            } else {
                low = middle;
            }
            middle = (low + high) / 2;
        }
        return middle;
    }
}
