package umbercard.geometry;

/**
 * A point that an outline or a path passes, with its two pulls: {@code in} is the control point of the segment that
 * arrives, {@code out} that of the segment that leaves, both as places, not as offsets. A pull that coincides with
 * {@code at} pulls nothing.
 *
 * @param round whether the outline passes the point smoothly; only a statement of the painter's intent, the pulls draw
 */
public record Node(Point at, Point in, Point out, boolean round) {

    /** A sharp point without pulls. */
    public static Node sharp(double x, double y) {
        return sharp(new Point(x, y));
    }

    /** A sharp point without pulls. */
    public static Node sharp(Point at) {
        return new Node(at, at, at, false);
    }

    /** The same node passed the other way round. */
    public Node reversed() {
        return new Node(at, out, in, round);
    }
}
