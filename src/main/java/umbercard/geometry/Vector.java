package umbercard.geometry;

/** A direction and a length. */
record Vector(double x, double y) {
    static Vector between(Point from, Point to) {
        return new Vector(to.x() - from.x(), to.y() - from.y());
    }

    Vector plus(Vector other) {
        return new Vector(x + other.x, y + other.y);
    }

    Vector times(double factor) {
        return new Vector(x * factor, y * factor);
    }

    double dot(Vector other) {
        return x * other.x + y * other.y;
    }

    double length() {
        return Math.hypot(x, y);
    }

    /** The same direction with length 1; the zero vector stays as it is. */
    Vector unit() {
        double length = length();
        return length == 0 ? this : times(1 / length);
    }

    Point from(Point start) {
        return start.plus(x, y);
    }
}
