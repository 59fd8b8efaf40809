package umbercard.geometry;

import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.PrecisionModel;

/**
 * The fixed grid that every region lies on. A power of two, so that rounding to it and scaling by it are exact in binary
 * floating point; 2⁻³⁰ of the unit is about a hundredth of the 1e-7 that edits snap to, and two millionths of a
 * millimeter's thousandth on a card.
 */
final class Grid {
    /** Coordinates are held within plus and minus this many units: 2⁵⁰ grid steps, all exact in a double. */
    static final double REACH = 0x1p20;

    /** The grid, and the coarser ones that take over should noding fail on it. */
    static final List<PrecisionModel> FINE_TO_COARSE =
            List.of(new PrecisionModel(0x1p30), new PrecisionModel(0x1p26), new PrecisionModel(0x1p22));

    private Grid() {}

    /** More than all places within reach. */
    static Envelope everywhere() {
        return new Envelope(-2 * REACH, 2 * REACH, -2 * REACH, 2 * REACH);
    }

    /** The nearest coordinate within reach. */
    static double held(double coordinate) {
        return Math.max(-REACH, Math.min(REACH, coordinate));
    }

    static Point held(Point point) {
        return Math.abs(point.x()) <= REACH && Math.abs(point.y()) <= REACH
                ? point
                : new Point(held(point.x()), held(point.y()));
    }
}
