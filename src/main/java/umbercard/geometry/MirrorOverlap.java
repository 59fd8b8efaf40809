package umbercard.geometry;

/**
 * How far a region agrees with its mirror image about the frame's upright middle line.
 *
 * @param shared the area of what lies in both, in square units
 * @param together the area of what lies in one or the other
 */
public record MirrorOverlap(double shared, double together) {

    /**
     * The overlap with the mirror image.
     *
     * @param region within the frame
     * @param ratio the frame's width, over zero; the middle line lies at half of it, to half a grid step of 2⁻³⁰
     */
    public static MirrorOverlap of(Region region, double ratio) {
        if (!(ratio > 0)) {
            throw new IllegalArgumentException("a frame has a width: " + ratio);
        }
        double shared = region.intersect(region.mirrored(ratio)).area();
        return new MirrorOverlap(shared, 2 * region.area() - shared);
    }

    /** Shared divided by together: 1 for a region that is its own mirror image, 0 for one that shares nothing with it or is empty. */
    public double share() {
        return together > 0 ? Math.max(0, Math.min(1, shared / together)) : 0;
    }
}
