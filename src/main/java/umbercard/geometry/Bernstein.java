package umbercard.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A cubic polynomial of a parameter in 0..1, by its four Bernstein coefficients; so it lies between their least and greatest. */
record Bernstein(double a, double b, double c, double d) {

    double at(double t) {
        double s = 1 - t;
        return s * s * s * a + 3 * s * s * t * b + 3 * s * t * t * c + t * t * t * d;
    }

    double least() {
        return Math.min(Math.min(a, b), Math.min(c, d));
    }

    double greatest() {
        return Math.max(Math.max(a, b), Math.max(c, d));
    }

    /** The parameters where the polynomial changes its sign, in order, to the last bit or two. */
    List<Double> zeros() {
        List<Double> zeros = new ArrayList<>();
        if (least() > 0 || greatest() < 0) {
            return zeros;
        }
        double[] turns = turns();
        for (int i = 1; i < turns.length; i++) {
            double from = at(turns[i - 1]);
            double to = at(turns[i]);
            if (from <= 0 != to <= 0) {
                zeros.add(zero(turns[i - 1], turns[i], to > 0));
            }
        }
        return zeros;
    }

    /** 0, 1 and the places between where the derivative (b−a)(1−t)² + 2(c−b)(1−t)t + (d−c)t² is zero, in order. */
    double[] turns() {
        double p = b - a;
        double q = c - b;
        double r = d - c;
        double discriminant = q * q - p * r;
        if (!(discriminant >= 0)) {
            return new double[] {0, 1};
        }
        // The form that does not cancel (Press et al. 2007, "Numerical Recipes", 5.6).
        double sum = p - q + Math.copySign(Math.sqrt(discriminant), p - q);
        return Arrays.stream(new double[] {0, 1, sum / (p - 2 * q + r), p / sum})
                .filter(t -> t >= 0 && t <= 1)
                .sorted()
                .toArray();
    }

    /** Where the sign changes between two places: of the last two that are told apart the one nearer to zero. */
    double zero(double from, double to, boolean rising) {
        double low = from;
        double high = to;
        for (double middle = (low + high) / 2; low < middle && middle < high; middle = (low + high) / 2) {
            if (at(middle) > 0 == rising) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return Math.abs(at(low)) < Math.abs(at(high)) ? low : high;
    }
}
