package umbercard.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;

/**
 * Where a region within the frame reaches the frame's sides. The frame is {@code ratio} wide and 1 high with its upper left
 * corner at the origin; lengths are in units of its height.
 *
 * <p>A region reaches a side where its border runs along it. What lies within 2⁻²⁰ of the side counts as on it, so a sliver
 * thinner than that, of the region or of what it leaves, shows on no side. Along a side, gaps and stretches not longer than
 * that are passed over, so pieces that meet in a point on the side change nothing there, and one that only touches the side
 * with a corner does not reach it. Other than that the places are those of the region's corners.
 */
public final class FrameContact {
    private final double ratio;
    private final Map<FrameSide, List<Stretch>> stretches = new EnumMap<>(FrameSide.class);

    private FrameContact(double ratio) {
        this.ratio = ratio;
    }

    /**
     * Where a region reaches the sides.
     *
     * @param region what lies outside the frame is left out
     * @param ratio the frame's width, over zero
     */
    public static FrameContact of(Region region, double ratio) {
        if (!(ratio > 0)) {
            throw new IllegalArgumentException("a frame has a width: " + ratio);
        }
        Map<FrameSide, Stretches> along = new EnumMap<>(FrameSide.class);
        for (FrameSide side : FrameSide.values()) {
            along.put(side, new Stretches());
        }
        region.intersect(Region.rectangle(0, 0, ratio, 1))
                .eachEdge((from, to) -> along.forEach((side, covered) -> {
                    if (side.holds(from, to, ratio)) {
                        covered.add(side.along(from), side.along(to), side.hand(from, to));
                    }
                }));
        FrameContact contact = new FrameContact(ratio);
        along.forEach(
                (side, covered) -> contact.stretches.put(side, covered.covered(side.length(ratio), FrameSide.SLACK)));
        return contact;
    }

    /**
     * Where a figure reaches the sides, by what it covers of them as lines.
     *
     * @param covered of the line that {@link FrameSides} gives a number
     * @param ratio the frame's width, over zero
     */
    public static FrameContact of(IntFunction<Spans> covered, double ratio) {
        FrameContact contact = new FrameContact(ratio);
        for (FrameSide side : FrameSide.values()) {
            List<Stretch> raw = covered.apply(FrameSides.line(side)).stretches();
            contact.stretches.put(side, Stretches.tidied(raw, side.length(ratio), FrameSide.SLACK));
        }
        return contact;
    }

    /** The parts of a side that the region reaches, in order from the left or from above. */
    public List<Stretch> stretches(FrameSide side) {
        return stretches.getOrDefault(side, List.of());
    }

    /** How much of a side the region reaches, in units. */
    public double length(FrameSide side) {
        return stretches(side).stream().mapToDouble(Stretch::length).sum();
    }

    /** How much of a side the region reaches, 0..1. */
    public double share(FrameSide side) {
        return length(side) / side.length(ratio);
    }

    /** The places between a side's ends where the value changes, in order from the left or from above. */
    public List<Point> changes(FrameSide side) {
        double length = side.length(ratio);
        List<Point> changes = new ArrayList<>();
        for (Stretch stretch : stretches(side)) {
            if (stretch.from() > 0) {
                changes.add(side.at(stretch.from(), ratio));
            }
            if (stretch.to() < length) {
                changes.add(side.at(stretch.to(), ratio));
            }
        }
        return changes;
    }

    /**
     * All places where the value changes on a walk round the frame, clockwise as seen on the card from the upper left corner,
     * which comes first if it is one: where two sides differ next to their common corner, that is one too. An even number;
     * none if all four sides are of one value.
     */
    public List<Point> changes() {
        List<Point> changes = new ArrayList<>();
        FrameSide before = FrameSide.LEFT;
        for (FrameSide side : FrameSide.values()) {
            boolean clockwiseIsOn = side == FrameSide.TOP || side == FrameSide.RIGHT;
            Point corner = side.at(clockwiseIsOn ? 0 : side.length(ratio), ratio);
            if (reaches(before, corner) != reaches(side, corner)) {
                changes.add(corner);
            }
            List<Point> between = new ArrayList<>(changes(side));
            if (!clockwiseIsOn) {
                Collections.reverse(between);
            }
            changes.addAll(between);
            before = side;
        }
        return changes;
    }

    /** Whether the region reaches the side next to a corner at one of its ends. */
    private boolean reaches(FrameSide side, Point corner) {
        double along = side.isLevel() ? corner.x() : corner.y();
        return stretches(side).stream().anyMatch(stretch -> stretch.from() == along || stretch.to() == along);
    }
}
