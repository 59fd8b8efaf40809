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
}
