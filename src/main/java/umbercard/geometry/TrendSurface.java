package umbercard.geometry;

import java.util.List;
import org.locationtech.jts.math.Matrix;

/**
 * A smooth surface through few samples: a polynomial of the second degree, fitted by least squares with a penalty on its
 * slopes and a larger one on its bends. So one sample gives a level, two a slope along their line, four corners a plane, and
 * six or more that stand all round a bend as well; where samples stand close together or in a line the surface stays level
 * across. Source: ridge regression, A. E. Hoerl, R. W. Kennard, Technometrics 12(1), 1970, 55–67; the weights of the penalty
 * are ours.
 */
public final class TrendSurface {
    private static final double SLOPE = 0.01;
    private static final double BEND = 0.03;
    private static final double[] PENALTY = {0, SLOPE, SLOPE, BEND, BEND, BEND};

    private final double[] factors;

    private TrendSurface(double[] factors) {
        this.factors = factors;
    }

    /**
     * The surface of samples.
     *
     * @param places where they were taken, in a unit in which -1..1 each way is what the surface is wanted for
     * @param heights one for each place
     * @throws IllegalArgumentException if there is no sample, or the counts differ
     */
    public static TrendSurface of(List<Point> places, double[] heights) {
        if (places.isEmpty() || places.size() != heights.length) {
            throw new IllegalArgumentException(places.size() + " places for " + heights.length + " heights");
        }
        int count = PENALTY.length;
        double[][] normal = new double[count][count];
        double[] right = new double[count];
        for (int k = 0; k < heights.length; k++) {
            double[] terms = terms(places.get(k));
            for (int i = 0; i < count; i++) {
                right[i] += terms[i] * heights[k];
                for (int j = 0; j < count; j++) {
                    normal[i][j] += terms[i] * terms[j];
                }
            }
        }
        for (int i = 0; i < count; i++) {
            normal[i][i] += PENALTY[i];
        }
        return new TrendSurface(Matrix.solve(normal, right));
    }

    /** The surface's height at a place. */
    public double at(Point place) {
        double[] terms = terms(place);
        double height = 0;
        for (int i = 0; i < terms.length; i++) {
            height += factors[i] * terms[i];
        }
        return height;
    }

    private static double[] terms(Point p) {
        return new double[] {1, p.x(), p.y(), p.x() * p.x(), p.x() * p.y(), p.y() * p.y()};
    }
}
