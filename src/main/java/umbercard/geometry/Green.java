package umbercard.geometry;

import java.util.List;

/**
 * Areas and moments of what cubic segments enclose, in closed form, by Green's theorem: each is the integral of a
 * polynomial of the parameter along the border, of degree 11 at most, which Gauss-Legendre quadrature with six places gives
 * exactly (Abramowitz and Stegun 1964, 25.4.29 and table 25.4). Positive where the border runs counter-clockwise with y up.
 */
final class Green {
    static final double[] PLACES = {0.2386191860831969, 0.6612093864662645, 0.932469514203152};
    static final double[] WEIGHTS = {0.46791393457269104, 0.3607615730481386, 0.17132449237917036};

    private Green() {}

    /** The signed area between a segment and its chord. */
    static double sector(Cubic c) {
        double ax = c.pullStart().x() - c.start().x();
        double ay = c.pullStart().y() - c.start().y();
        double bx = c.pullEnd().x() - c.start().x();
        double by = c.pullEnd().y() - c.start().y();
        double cx = c.end().x() - c.start().x();
        double cy = c.end().y() - c.start().y();
        return (3 * (ax * by - ay * bx) + 3 * (ax * cy - ay * cx) + 6 * (bx * cy - by * cx)) / 20;
    }

    /** Signed moments about the origin of what a closed border encloses, each place counted as often as it is wound round. */
    static Moments moments(List<Cubic> border) {
        if (border.isEmpty()) {
            return Moments.ZERO;
        }
        Point origin = border.get(0).start();
        double[] sums = new double[6];
        for (Cubic segment : border) {
            add(segment, origin, sums);
        }
        return new Moments(sums[0], sums[1], sums[2], sums[3], sums[4], sums[5]).moved(origin.x(), origin.y());
    }

    private static void add(Cubic segment, Point origin, double[] sums) {
        for (int i = 0; i < PLACES.length; i++) {
            add(segment, (1 - PLACES[i]) / 2, WEIGHTS[i] / 2, origin, sums);
            add(segment, (1 + PLACES[i]) / 2, WEIGHTS[i] / 2, origin, sums);
        }
    }

    private static void add(Cubic segment, double t, double weight, Point origin, double[] sums) {
        Point at = segment.at(t);
        double x = at.x() - origin.x();
        double y = at.y() - origin.y();
        Vector rate = segment.rate(t);
        double dy = weight * rate.y();
        sums[0] += (x * dy - y * weight * rate.x()) / 2;
        sums[1] += x * x / 2 * dy;
        sums[2] += x * y * dy;
        sums[3] += x * x * x / 3 * dy;
        sums[4] += x * y * y * dy;
        sums[5] += x * x * y / 2 * dy;
    }
}
