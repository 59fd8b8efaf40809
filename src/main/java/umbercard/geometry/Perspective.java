package umbercard.geometry;

import java.util.List;
import java.util.Optional;

/**
 * How a flat rectangle looks from anywhere: the projective map of a rectangle, its upper left corner at the origin, onto
 * four points of a picture, and back. Straight lines stay straight.
 *
 * <p>Source: P. S. Heckbert, Fundamentals of Texture Mapping and Image Warping, University of California, Berkeley,
 * UCB/CSD 89/516, 1989, section 2.2.3: the unit square to a quadrilateral in closed form, and the inverse by the adjoint.
 */
public final class Perspective {
    /** How much each corner must turn, as a share of the longest side's square: less is no corner. */
    private static final double LEAST_TURN = 1e-4;

    private final Size flat;
    private final double[] forth;
    private final double[] back;

    private Perspective(Size flat, double[] forth) {
        this.flat = flat;
        this.forth = forth;
        this.back = adjoint(forth);
    }

    /**
     * The map onto four corners as they are seen: upper left, upper right, lower right, lower left, with y down.
     *
     * @param flat the rectangle's size, in any unit
     * @return empty where the corners do not go round clockwise, or cross, turn inward, or lie (nearly) in a line: no flat
     *     rectangle looks like that
     * @throws IllegalArgumentException unless there are four corners
     */
    public static Optional<Perspective> of(Size flat, List<Point> corners) {
        if (corners.size() != 4) {
            throw new IllegalArgumentException("a rectangle has four corners, not " + corners.size());
        }
        return isSeenFromAbove(corners) ? Optional.of(new Perspective(flat, square(corners))) : Optional.empty();
    }

    /** Where a place on the rectangle is seen; places beyond its border, too, as long as they lie before the eye. */
    public Point seen(Point place) {
        return times(forth, place.x() / flat.width(), place.y() / flat.height());
    }

    /** Which place on the rectangle is seen there. */
    public Point place(Point seen) {
        Point unit = times(back, seen.x(), seen.y());
        return new Point(unit.x() * flat.width(), unit.y() * flat.height());
    }

    private static boolean isSeenFromAbove(List<Point> corners) {
        double longest = 0;
        double least = Double.MAX_VALUE;
        for (int i = 0; i < 4; i++) {
            Vector in = Vector.between(corners.get(i), corners.get((i + 1) % 4));
            Vector out = Vector.between(corners.get((i + 1) % 4), corners.get((i + 2) % 4));
            longest = Math.max(longest, in.length());
            least = Math.min(least, in.x() * out.y() - in.y() * out.x());
        }
        return least > LEAST_TURN * longest * longest;
    }

    private static double[] square(List<Point> corners) {
        Point a = corners.get(0);
        Point b = corners.get(1);
        Point c = corners.get(2);
        Point d = corners.get(3);
        double x1 = b.x() - c.x();
        double y1 = b.y() - c.y();
        double x2 = d.x() - c.x();
        double y2 = d.y() - c.y();
        double x3 = a.x() - b.x() + c.x() - d.x();
        double y3 = a.y() - b.y() + c.y() - d.y();
        double whole = x1 * y2 - x2 * y1;
        double g = (x3 * y2 - x2 * y3) / whole;
        double h = (x1 * y3 - x3 * y1) / whole;
        return new double[] {
            b.x() - a.x() + g * b.x(),
            d.x() - a.x() + h * d.x(),
            a.x(),
            b.y() - a.y() + g * b.y(),
            d.y() - a.y() + h * d.y(),
            a.y(),
            g,
            h,
            1
        };
    }

    private static double[] adjoint(double[] m) {
        return new double[] {
            m[4] * m[8] - m[5] * m[7], m[2] * m[7] - m[1] * m[8], m[1] * m[5] - m[2] * m[4],
            m[5] * m[6] - m[3] * m[8], m[0] * m[8] - m[2] * m[6], m[2] * m[3] - m[0] * m[5],
            m[3] * m[7] - m[4] * m[6], m[1] * m[6] - m[0] * m[7], m[0] * m[4] - m[1] * m[3]
        };
    }

    private static Point times(double[] m, double x, double y) {
        double w = m[6] * x + m[7] * y + m[8];
        return new Point((m[0] * x + m[1] * y + m[2]) / w, (m[3] * x + m[4] * y + m[5]) / w);
    }
}
