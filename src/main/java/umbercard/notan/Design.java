package umbercard.notan;

import umbercard.geometry.Region;

/**
 * What a thumbnail comes to: the dark region within the frame.
 *
 * @param ratio the frame's width; its height is 1
 * @param dark never outside the frame
 */
public record Design(double ratio, Region dark) {

    /** The share of the frame that is dark, 0..1. */
    public double darkShare() {
        return Math.min(1, Math.max(0, dark.area() / ratio));
    }

    /** The frame itself. */
    public Region frame() {
        return Region.rectangle(0, 0, ratio, 1);
    }

    /** What is not dark. */
    public Region light() {
        return frame().minus(dark);
    }
}
