package umbercard.geometry;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/** The four {@link FrameSide}s of a frame as lines; each is followed just within the frame. */
public final class FrameSides implements Lines {
    /** How far within the frame a side is followed: what lies nearer to it reaches it. */
    private static final double WITHIN = FrameSide.SLACK;

    private static final List<FrameSide> SIDES = List.of(FrameSide.values());

    private final double ratio;

    /** The sides of a frame that many units wide and 1 high. */
    public FrameSides(double ratio) {
        this.ratio = ratio;
    }

    /** The number of a side's line. */
    public static int line(FrameSide side) {
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
        return SIDES.get(line).length(ratio);
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
            cross(FrameSide.TOP, a.y - WITHIN, b.y - WITHIN, a.x, b.x, crossings);
            cross(FrameSide.RIGHT, a.x - (ratio - WITHIN), b.x - (ratio - WITHIN), a.y, b.y, crossings);
            cross(FrameSide.BOTTOM, a.y - (1 - WITHIN), b.y - (1 - WITHIN), a.x, b.x, crossings);
            cross(FrameSide.LEFT, a.x - WITHIN, b.x - WITHIN, a.y, b.y, crossings);
        }
    }

    /** Whether an edge crosses a side: {@code off} and {@code offAfter} tell on which side of it its ends lie. */
    private static void cross(
            FrameSide side, double off, double offAfter, double from, double to, LineCrossings crossings) {
        if (off < 0 != offAfter < 0) {
            crossings.add(line(side), from + (to - from) * (off / (off - offAfter)), off < 0);
        }
    }
}
