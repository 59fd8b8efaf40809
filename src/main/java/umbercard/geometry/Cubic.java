package umbercard.geometry;

/** One cubic Bézier segment; a straight line when both control points lie on their ends. */
public record Cubic(Point start, Point pullStart, Point pullEnd, Point end) {

    public boolean isLine() {
        return pullStart.equals(start) && pullEnd.equals(end);
    }

    /** The point at parameter {@code t}, 0..1, by Bernstein polynomials. */
    public Point at(double t) {
        double s = 1 - t;
        double a = s * s * s;
        double b = 3 * s * s * t;
        double c = 3 * s * t * t;
        double d = t * t * t;
        return new Point(
                a * start.x() + b * pullStart.x() + c * pullEnd.x() + d * end.x(),
                a * start.y() + b * pullStart.y() + c * pullEnd.y() + d * end.y());
    }

    /** The derivative by {@code t}. */
    Vector rate(double t) {
        double a = 3 * (1 - t) * (1 - t);
        double b = 6 * (1 - t) * t;
        double c = 3 * t * t;
        return new Vector(
                a * (pullStart.x() - start.x()) + b * (pullEnd.x() - pullStart.x()) + c * (end.x() - pullEnd.x()),
                a * (pullStart.y() - start.y()) + b * (pullEnd.y() - pullStart.y()) + c * (end.y() - pullEnd.y()));
    }

    /** The second derivative by {@code t}. */
    Vector acceleration(double t) {
        double a = 6 * (1 - t);
        double b = 6 * t;
        return new Vector(
                a * (start.x() - 2 * pullStart.x() + pullEnd.x()) + b * (pullStart.x() - 2 * pullEnd.x() + end.x()),
                a * (start.y() - 2 * pullStart.y() + pullEnd.y()) + b * (pullStart.y() - 2 * pullEnd.y() + end.y()));
    }

    /** The part between two parameters, by the blossom (Farin 2002, "Curves and Surfaces for CAGD", 3.4). */
    Cubic part(double from, double to) {
        return new Cubic(
                blossom(from, from, from), blossom(from, from, to), blossom(from, to, to), blossom(to, to, to));
    }

    private Point blossom(double r, double s, double t) {
        Point ab = start.toward(pullStart, r);
        Point bc = pullStart.toward(pullEnd, r);
        Point cd = pullEnd.toward(end, r);
        return ab.toward(bc, s).toward(bc.toward(cd, s), t);
    }
}
