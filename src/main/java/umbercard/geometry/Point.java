package umbercard.geometry;

/**
 * A place in the plane. On a thumbnail the unit is the frame's height: {@code x} runs to the right from 0 to the
 * frame's ratio, {@code y} runs down from 0 to 1. On a card the unit is the millimeter. Both coordinates are finite.
 */
public record Point(double x, double y) {
    public Point {
        if (!Double.isFinite(x) || !Double.isFinite(y)) {
            throw new IllegalArgumentException("coordinates must be finite: " + x + ", " + y);
        }
    }

    public Point plus(double dx, double dy) {
        return new Point(x + dx, y + dy);
    }

    public double distance(Point other) {
        return Math.hypot(x - other.x, y - other.y);
    }

    /** The point at {@code share} of the way to {@code other}: 0 is this point, 1 the other. */
    public Point toward(Point other, double share) {
        return new Point(x + share * (other.x - x), y + share * (other.y - y));
    }
}
