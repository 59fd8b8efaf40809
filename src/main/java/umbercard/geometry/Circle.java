package umbercard.geometry;

import org.locationtech.jts.geom.Coordinate;

/** An exact circle: all its measures are in closed form, no polygon stands for it. The radius is 0 or more, in units. */
public record Circle(Point center, double radius) {
    public Circle {
        if (!(radius >= 0) || Double.isInfinite(radius)) {
            throw new IllegalArgumentException("a radius is not negative: " + radius);
        }
    }

    /** The area of the part of a region that lies inside, in square units. */
    public double areaWithin(Region region) {
        double[] sum = new double[1];
        region.eachEdge((from, to) -> sum[0] += sector(from, to));
        return Math.max(0, sum[0]);
    }

    /**
     * The length of an edge's part inside: where the distance from the center to its line, |d × c| / |d|, leaves a chord of
     * half the length √(r² − distance²) about the center's foot.
     */
    double chord(Coordinate from, Coordinate to) {
        double length = from.distance(to);
        double[] part = part(from, to);
        return length * (part[1] - part[0]);
    }

    /** Where an edge is inside, as shares of its length; two equal ones if it is not. */
    private double[] part(Coordinate from, Coordinate to) {
        double dx = to.x - from.x;
        double dy = to.y - from.y;
        double length = Math.hypot(dx, dy);
        if (length == 0) {
            return new double[2];
        }
        double cx = center.x() - from.x;
        double cy = center.y() - from.y;
        double foot = (cx * dx + cy * dy) / (length * length);
        double off = Math.abs(cx * dy - cy * dx) / length;
        double half = off < radius ? Math.sqrt((radius - off) * (radius + off)) / length : 0;
        return new double[] {clamped(foot - half), clamped(foot + half)};
    }

    private static double clamped(double share) {
        return Math.max(0, Math.min(1, share));
    }

    /** The signed area inside the triangle of the center and an edge: a triangle over the chord, sectors beside it. */
    private double sector(Coordinate from, Coordinate to) {
        double[] part = part(from, to);
        double ax = from.x - center.x();
        double ay = from.y - center.y();
        double dx = to.x - from.x;
        double dy = to.y - from.y;
        double first = arc(ax, ay, ax + part[0] * dx, ay + part[0] * dy);
        double last = arc(ax + part[1] * dx, ay + part[1] * dy, ax + dx, ay + dy);
        return first + (part[1] - part[0]) * (ax * dy - ay * dx) / 2 + last;
    }

    /** The signed area of the sector between two directions. */
    private double arc(double ax, double ay, double bx, double by) {
        return radius * radius * StrictMath.atan2(ax * by - ay * bx, ax * bx + ay * by) / 2;
    }
}
