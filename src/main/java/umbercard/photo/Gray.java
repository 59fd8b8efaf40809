package umbercard.photo;

import umbercard.geometry.Point;
import umbercard.picture.Picture;

/**
 * A white or gray thing of known value that stands in the photograph.
 *
 * @param middle of a disk that shows nothing else, in pixels of the picture
 * @param radius of the disk in pixels, over 0
 * @param value Munsell value, over 0 to 10
 */
public record Gray(Point middle, double radius, double value) {
    /**
     * What ordinary white paper comes to, and the lightest chip of Munsell's neutral scale (N 9.5/): L* 96. That paper is
     * that light is common practice, no source.
     */
    public static final double PAPER = 9.5;

    private static final double DISK = 0.006;

    public Gray {
        if (!(radius > 0) || !(value > 0) || value > 10) {
            throw new IllegalArgumentException("a gray needs a radius and a value over 0: " + radius + ", " + value);
        }
    }

    /** One that is pointed at: a small disk, {@value #DISK} of the picture's long side, about the place. */
    public static Gray at(Point place, double value, Picture picture) {
        return new Gray(place, DISK * Math.max(picture.width(), picture.height()), value);
    }
}
