package umbercard.geometry;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/** The four {@link Side}s of a frame as lines; each is followed just within the frame. */
public final class FrameSides implements Lines {
    /** How far within the frame a side is followed: finer than edits, coarser than rounding. */
    private static final double WITHIN = 0x1p-26;

    private static final List<Side> SIDES = List.of(Side.values());

    private final double ratio;

    /** The sides of a frame that many units wide and 1 high. */
    public FrameSides(double ratio) {
        this.ratio = ratio;
    }

    /** The number of a side's line. */
    public static int line(Side side) {
        return SIDES.indexOf(side);
    }

    @Override
    public int size() {
        return SIDES.size();
    }

    @Override
    public Spans whole(int line) {
        Spans whole = new Spans();
        whole.add(0, length(line));
        return whole;
    }

    private double length(int line) {
        return SIDES.get(line).isLevel() ? ratio : 1;
    }

    @Override
    public Hatching of(Outline outline) {
        LineCrossings crossings = new LineCrossings();
        if (outline.nodes().stream().anyMatch(this::reachesOut)) {
            cross(Flattening.ring(outline), crossings);
        }
        return Hatching.of(crossings, line -> 0, this::length);
    }

    /** Whether a node or a pull of its lies at a side or beyond; where none does, the whole curve lies within. */
    private boolean reachesOut(Node node) {
        return reachesOut(node.at()) || reachesOut(node.in()) || reachesOut(node.out());
    }

    private boolean reachesOut(Point point) {
        return Math.min(Math.min(point.x(), ratio - point.x()), Math.min(point.y(), 1 - point.y())) <= 2 * WITHIN;
    }

    private void cross(Coordinate[] ring, LineCrossings crossings) {
        for (int i = 1; i < ring.length; i++) {
            Coordinate a = ring[i - 1];
            Coordinate b = ring[i];
            cross(Side.TOP, a.y - WITHIN, b.y - WITHIN, a.x, b.x, crossings);
            cross(Side.RIGHT, a.x - (ratio - WITHIN), b.x - (ratio - WITHIN), a.y, b.y, crossings);
            cross(Side.BOTTOM, a.y - (1 - WITHIN), b.y - (1 - WITHIN), a.x, b.x, crossings);
            cross(Side.LEFT, a.x - WITHIN, b.x - WITHIN, a.y, b.y, crossings);
        }
    }

    /** Whether an edge crosses a side: {@code off} and {@code offAfter} tell on which side of it its ends lie. */
    private static void cross(Side side, double off, double offAfter, double from, double to, LineCrossings crossings) {
        if (off < 0 != offAfter < 0) {
            crossings.add(line(side), from + (to - from) * (off / (off - offAfter)), off < 0);
        }
    }
}
