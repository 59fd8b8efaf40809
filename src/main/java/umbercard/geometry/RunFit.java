package umbercard.geometry;

import java.util.List;
import java.util.Optional;

/** One cubic for one run of points with given end tangents: least squares, then Newton's method for the parameters. */
final class RunFit {
    private static final int ROUNDS = 8;

    private final List<Point> points;
    private final List<Point> raw;
    private final double grain;
    private final Vector startTangent;
    private final Vector endTangent;
    private final double[] parameters;
    private int worst;

    /**
     * At least two points; unit tangents that both point into the run.
     *
     * @param points what is fitted
     * @param raw what the result is judged by: as many squares about these, {@code grain} to each side
     */
    RunFit(List<Point> points, List<Point> raw, double grain, Vector startTangent, Vector endTangent) {
        this.points = points;
        this.raw = raw;
        this.grain = grain;
        this.startTangent = startTangent;
        this.endTangent = endTangent;
        parameters = chordLengths();
    }

    /** The point that lay furthest from the last cubic tried; never the first or the last of the run. */
    int worst() {
        return worst;
    }

    /** The cubic that passes all points within the tolerance, if one round finds it. */
    Optional<Cubic> within(double tolerance) {
        if (points.size() == 2) {
            double third = first().distance(last()) / 3;
            return Optional.of(withPulls(third, third));
        }
        for (int round = 0; round < ROUNDS; round++) {
            Cubic cubic = leastSquares();
            double error = error(cubic);
            if (error <= tolerance) {
                return Optional.of(cubic);
            }
            if (error > 8 * tolerance) {
                return Optional.empty();
            }
            for (int i = 1; i < parameters.length - 1; i++) {
                parameters[i] = nearer(cubic, points.get(i), parameters[i]);
            }
        }
        return Optional.empty();
    }

    private Point first() {
        return points.get(0);
    }

    private Point last() {
        return points.get(points.size() - 1);
    }

    private Cubic withPulls(double start, double end) {
        return new Cubic(
                first(),
                startTangent.times(start).from(first()),
                endTangent.times(end).from(last()),
                last());
    }

    private double[] chordLengths() {
        double[] lengths = new double[points.size()];
        for (int i = 1; i < lengths.length; i++) {
            lengths[i] = lengths[i - 1] + points.get(i - 1).distance(points.get(i));
        }
        for (int i = 1; i < lengths.length; i++) {
            lengths[i] /= lengths[lengths.length - 1];
        }
        return lengths;
    }

    /** The pulls' lengths by the normal equations of Schneider's text; a third of the chord where they give none. */
    private Cubic leastSquares() {
        double c00 = 0;
        double c01 = 0;
        double c11 = 0;
        double x0 = 0;
        double x1 = 0;
        for (int i = 0; i < parameters.length; i++) {
            double t = parameters[i];
            double s = 1 - t;
            Vector a0 = startTangent.times(3 * s * s * t);
            Vector a1 = endTangent.times(3 * s * t * t);
            double atFirst = s * s * s + 3 * s * s * t;
            double atLast = 3 * s * t * t + t * t * t;
            Vector rest = new Vector(
                    points.get(i).x() - atFirst * first().x() - atLast * last().x(),
                    points.get(i).y() - atFirst * first().y() - atLast * last().y());
            c00 += a0.dot(a0);
            c01 += a0.dot(a1);
            c11 += a1.dot(a1);
            x0 += a0.dot(rest);
            x1 += a1.dot(rest);
        }
        double determinant = c00 * c11 - c01 * c01;
        double chord = first().distance(last());
        double start = (x0 * c11 - x1 * c01) / determinant;
        double end = (c00 * x1 - c01 * x0) / determinant;
        double least = 1e-6 * chord;
        boolean sound = start > least && end > least && start < 1e3 * chord && end < 1e3 * chord;
        return sound ? withPulls(start, end) : withPulls(chord / 3, chord / 3);
    }

    /** The greatest distance of a point from the curve at its parameter. */
    private double error(Cubic cubic) {
        double error = 0;
        worst = points.size() / 2;
        for (int i = 1; i < parameters.length - 1; i++) {
            double distance = distanceToSquare(cubic.at(parameters[i]), raw.get(i), grain);
            if (distance > error) {
                error = distance;
                worst = i;
            }
        }
        return error;
    }

    /** From a place to the square that reaches {@code grain} to each side of a middle. */
    static double distanceToSquare(Point from, Point middle, double grain) {
        return Math.hypot(
                Math.max(0, Math.abs(from.x() - middle.x()) - grain),
                Math.max(0, Math.abs(from.y() - middle.y()) - grain));
    }

    /** One step of Newton's method on the square of the distance; the old parameter where it leads away. */
    private static double nearer(Cubic cubic, Point point, double t) {
        Vector off = Vector.between(point, cubic.at(t));
        Vector first = cubic.rate(t);
        Vector second = cubic.acceleration(t);
        double slope = first.dot(first) + off.dot(second);
        double moved = slope == 0 ? t : t - off.dot(first) / slope;
        return moved > 0 && moved < 1 && point.distance(cubic.at(moved)) <= off.length() ? moved : t;
    }

    /** The distance of a point from a line between two places. */
    static double distanceToLine(Point point, Point from, Point to) {
        return point.distance(nearest(point, from, to));
    }

    /** The place nearest to a point on a line between two places. */
    static Point nearest(Point point, Point from, Point to) {
        Vector line = Vector.between(from, to);
        double square = line.dot(line);
        double share = square == 0 ? 0 : Vector.between(from, point).dot(line) / square;
        return from.toward(to, Math.max(0, Math.min(1, share)));
    }
}
