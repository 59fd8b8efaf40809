package umbercard.geometry;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/** A region's border, or the part of it that lies within the frame, where two values meet; to be measured in parts. */
public final class Borderline {
    private record Side(Coordinate from, Coordinate to) {}

    private final List<Side> sides;

    private Borderline(List<Side> sides) {
        this.sides = List.copyOf(sides);
    }

    /** The whole border, holes' included. */
    public static Borderline of(Region region) {
        List<Side> sides = new ArrayList<>();
        region.eachEdge((from, to) -> sides.add(new Side(from, to)));
        return new Borderline(sides);
    }

    /**
     * The border without what runs along the frame: the edges between dark and light that one sees. The frame is
     * {@code ratio} wide and 1 high with its upper left corner at the origin; an edge runs along it if both its ends lie within
     * 2⁻²⁰ of the same side.
     *
     * @param region within the frame
     * @param ratio the frame's width, over zero
     */
    public static Borderline withinFrame(Region region, double ratio) {
        List<Side> sides = new ArrayList<>();
        region.eachEdge((from, to) -> {
            if (!FrameSide.anyHolds(from, to, ratio)) {
                sides.add(new Side(from, to));
            }
        });
        return new Borderline(sides);
    }

    /** In units. */
    public double length() {
        return sides.stream().mapToDouble(side -> side.from.distance(side.to)).sum();
    }

    /** The length of what lies inside a circle, in units. */
    public double lengthWithin(Circle circle) {
        return sides.stream()
                .mapToDouble(side -> circle.chord(side.from, side.to))
                .sum();
    }
}
