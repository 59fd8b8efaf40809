package umbercard.geometry;

import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;

/**
 * The nearest places of two things, one on each; the same place where they touch or overlap. Where more than one pair of
 * places is nearest, it is one of them, always the same.
 */
public record Gap(Point from, Point to) {

    /** In units, 0 or more. */
    public double distance() {
        return from.distance(to);
    }

    /** The same gap seen from the other side. */
    public Gap reversed() {
        return new Gap(to, from);
    }

    /**
     * From one region to another: exact for their straight-sided borders, to the rounding of doubles. Empty if one of them is.
     */
    public static Optional<Gap> between(Region one, Region other) {
        return one.isEmpty() || other.isEmpty()
                ? Optional.empty()
                : Optional.of(new Facets(one).gapTo(new Facets(other)));
    }

    /**
     * From a region within the frame to a side of it, which is {@code ratio} wide and 1 high with its upper left corner at the
     * origin. A corner of the region within 2⁻²⁰ of the side touches it. Of several nearest places the first from the left or
     * from above. Empty if the region is.
     */
    public static Optional<Gap> toSide(Region region, FrameSide side, double ratio) {
        Coordinate[] nearest = new Coordinate[1];
        region.eachEdge((from, to) -> {
            if (nearest[0] == null || isNearer(to, nearest[0], side, ratio)) {
                nearest[0] = to;
            }
        });
        return Optional.ofNullable(nearest[0]).map(corner -> {
            double along = Math.max(0, Math.min(side.length(ratio), side.along(corner)));
            Point on = side.at(along, ratio);
            return new Gap(distance(corner, side, ratio) == 0 ? on : new Point(corner.x, corner.y), on);
        });
    }

    private static boolean isNearer(Coordinate corner, Coordinate best, FrameSide side, double ratio) {
        int order = Double.compare(distance(corner, side, ratio), distance(best, side, ratio));
        return order < 0 || (order == 0 && side.along(corner) < side.along(best));
    }

    private static double distance(Coordinate corner, FrameSide side, double ratio) {
        double inside = side.inside(corner, ratio);
        return inside <= FrameSide.SLACK ? 0 : inside;
    }
}
