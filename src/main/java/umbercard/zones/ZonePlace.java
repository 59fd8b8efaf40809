package umbercard.zones;

import umbercard.geometry.Region;
import umbercard.model.Zone;
import umbercard.notan.Design;

/**
 * Where a zone lies on a thumbnail.
 *
 * @param drawn its area within the frame, never empty
 * @param seen what no nearer zone covers of that
 * @param share of the frame that it takes up as drawn, over 0 up to 1
 */
public record ZonePlace(Zone zone, Region drawn, Region seen, double share) {

    /** Whether a nearer zone covers more of it than a crack. */
    public boolean isCovered() {
        return drawn.area() - seen.area() > ZoneMap.CRACK * drawn.area() / share;
    }

    /** Down from the frame's upper edge to the center of gravity of what is drawn, 0..1. */
    public double height() {
        return drawn.moments().centroid().orElseThrow().y();
    }

    /** How much of what is drawn is dark on the notan, 0..1. */
    public double darkShare(Design design) {
        return Math.min(1, drawn.intersect(design.dark()).area() / drawn.area());
    }

    /** Whether it is a dark zone: one more than half covered by the dark. */
    public boolean isDark(Design design) {
        return darkShare(design) > 0.5;
    }
}
