package umbercard.notan;

import umbercard.geometry.Moments;

/**
 * A design's figures while the hand moves.
 *
 * @param ratio the frame's width; its height is 1
 * @param dark area and moments of the dark region
 * @param masses of at least 2 % of the frame
 */
public record Glance(double ratio, Moments dark, MassCounts masses) {
    /** The share of the frame that is dark, 0..1, within 3e-6. */
    public double darkShare() {
        return Math.min(1, Math.max(0, dark.area() / ratio));
    }
}
