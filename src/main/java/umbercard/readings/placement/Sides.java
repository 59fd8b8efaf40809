package umbercard.readings.placement;

import java.util.List;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.geometry.Region;
import umbercard.model.Level;

/** What lies on either side of a line across the frame; the regions may reach outside the frame. */
final class Sides {
    private Sides() {}

    /** All that lies above the line, as far up as the frame and the line reach. */
    static Region above(Level level, double ratio) {
        double left = level.yAt(0, ratio);
        double right = level.yAt(ratio, ratio);
        double top = Math.min(0, Math.min(left, right)) - 1;
        return band(top, left, ratio, top, right);
    }

    /** The band of that depth, measured straight down, that hangs under the line. */
    static Region beneath(Level level, double ratio, double depth) {
        double left = level.yAt(0, ratio);
        double right = level.yAt(ratio, ratio);
        return band(left, left + depth, ratio, right, right + depth);
    }

    private static Region band(double leftTop, double leftFoot, double ratio, double rightTop, double rightFoot) {
        return Region.of(Outline.polygon(List.of(
                new Point(0, leftTop),
                new Point(ratio, rightTop),
                new Point(ratio, rightFoot),
                new Point(0, leftFoot))));
    }
}
