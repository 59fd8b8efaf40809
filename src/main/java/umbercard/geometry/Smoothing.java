package umbercard.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Takes the steps of the pixel grid out of a drawn line. Each place is put onto the parabola of least squares through those
 * around it (Savitzky and Golay 1964, "Smoothing and differentiation of data by simplified least squares procedures",
 * Analytical Chemistry 36), as many of them as pass the parabola within their own pixels: a rounded place may have been
 * anywhere in its pixel, so the line may have been the parabola. The result never leaves the pixel.
 */
final class Smoothing {
    /** How many places on both sides take part, tried in turn. */
    private static final int[] REACHES = {24, 17, 12, 9, 7, 5, 4, 3, 2};

    private final List<Point> raw;
    private final double grain;

    /** @param grain half a pixel */
    private Smoothing(List<Point> raw, double grain) {
        this.raw = raw;
        this.grain = grain;
    }

    /**
     * The places of an open run; its ends stay.
     *
     * @param grain half the side of the squares that stand for the places, 0 or more
     */
    static List<Point> open(List<Point> raw, double grain) {
        if (grain == 0 || raw.size() < 5) {
            return raw;
        }
        Smoothing smoothing = new Smoothing(raw, grain);
        List<Point> smooth = new ArrayList<>(raw);
        for (int i = 1; i < raw.size() - 1; i++) {
            smooth.set(i, smoothing.place(i));
        }
        return smooth;
    }

    /** The places of a run that goes on from its last to its first, which it repeats. */
    static List<Point> closed(List<Point> raw, double grain) {
        int n = raw.size() - 1;
        int more = Math.min(n - 1, REACHES[0]);
        List<Point> longer = new ArrayList<>(raw.subList(n - more, n));
        longer.addAll(raw);
        longer.addAll(raw.subList(1, 1 + more));
        return List.copyOf(open(longer, grain).subList(more, more + n + 1));
    }

    private Point place(int i) {
        int most = Math.min(i, raw.size() - 1 - i);
        for (int reach : REACHES) {
            if (reach <= most) {
                double[] x = parabola(i, reach, true);
                double[] y = parabola(i, reach, false);
                if (passes(i, reach, x, y)) {
                    return new Point(x[0], y[0]);
                }
            }
        }
        return raw.get(i);
    }

    /** The coefficients of 1, k and k² of least squares over the offsets k from -reach to reach. */
    private double[] parabola(int i, int reach, boolean ofX) {
        double n = 2.0 * reach + 1;
        double k2 = reach * (reach + 1.0) * n / 3;
        double k4 = k2 * (3.0 * reach * reach + 3.0 * reach - 1) / 5;
        double sum = 0;
        double first = 0;
        double second = 0;
        for (int k = -reach; k <= reach; k++) {
            double value = ofX ? raw.get(i + k).x() : raw.get(i + k).y();
            sum += value;
            first += k * value;
            second += (double) k * k * value;
        }
        double determinant = n * k4 - k2 * k2;
        return new double[] {(k4 * sum - k2 * second) / determinant, first / k2, (n * second - k2 * sum) / determinant};
    }

    private boolean passes(int i, int reach, double[] x, double[] y) {
        for (int k = -reach; k <= reach; k++) {
            Point p = raw.get(i + k);
            if (Math.abs(x[0] + k * (x[1] + k * x[2]) - p.x()) > grain
                    || Math.abs(y[0] + k * (y[1] + k * y[2]) - p.y()) > grain) {
                return false;
            }
        }
        return true;
    }
}
