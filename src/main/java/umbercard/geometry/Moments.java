package umbercard.geometry;

import java.util.Optional;

/**
 * Area and moments of a plane figure about the origin: {@code area} = ∫dA, {@code x} = ∫x dA, {@code y} = ∫y dA,
 * {@code xx} = ∫x² dA, {@code yy} = ∫y² dA, {@code xy} = ∫xy dA. Moments of disjoint figures add.
 */
public record Moments(double area, double x, double y, double xx, double yy, double xy) {
    public static final Moments ZERO = new Moments(0, 0, 0, 0, 0, 0);

    public Moments plus(Moments other) {
        return new Moments(area + other.area, x + other.x, y + other.y, xx + other.xx, yy + other.yy, xy + other.xy);
    }

    public Moments times(double factor) {
        return new Moments(area * factor, x * factor, y * factor, xx * factor, yy * factor, xy * factor);
    }

    /** The moments of the same figure moved by (dx, dy). */
    public Moments moved(double dx, double dy) {
        return new Moments(
                area,
                x + dx * area,
                y + dy * area,
                xx + 2 * dx * x + dx * dx * area,
                yy + 2 * dy * y + dy * dy * area,
                xy + dx * y + dy * x + dx * dy * area);
    }

    /** The moments of the same figure about its center of gravity; about the origin where the area is zero. */
    public Moments central() {
        return area == 0 ? this : moved(-x / area, -y / area);
    }

    /** The center of gravity; empty where the area is zero. */
    public Optional<Point> centroid() {
        return area == 0 ? Optional.empty() : Optional.of(new Point(x / area, y / area));
    }
}
