package umbercard.notan;

import umbercard.geometry.FrameContact;
import umbercard.geometry.Moments;

/**
 * A design's figures while the hand moves.
 *
 * @param ratio the frame's width; its height is 1
 * @param dark area and moments of the dark region
 * @param contact where the dark reaches the frame's sides
 * @param masses of the dark and of the light
 */
public record Glance(double ratio, Moments dark, FrameContact contact, MassCounts masses) {
    /** The share of the frame that is dark, 0..1. */
    public double darkShare() {
        return Math.min(1, Math.max(0, dark.area() / ratio));
    }
}
