package umbercard.photo;

import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import umbercard.picture.Picture;
import umbercard.words.Trouble;

/**
 * The small picture that a camera puts into a JPEG file (CIPA DC-008), as a first sight of the large one: in its colors, its
 * proportions, and upright. Cameras fill the small picture's own proportions with black bars; they are cut off.
 */
final class FirstSight {
    private static final Logger LOG = Logger.getLogger(FirstSight.class.getName());

    private FirstSight() {}

    /** The first sight of a JPEG file, if it has one that can be read. */
    static Optional<Picture> of(JpegFile jpeg, Exif exif) {
        return exif.thumbnail()
                .filter(small -> jpeg.width() > 0 && jpeg.height() > 0)
                .flatMap(small -> decoded(small, jpeg))
                .map(small -> cut(small, (double) jpeg.width() / jpeg.height()))
                .map(small -> Orientation.upright(small, exif.orientation()));
    }

    private static Optional<Picture> decoded(byte[] small, JpegFile jpeg) {
        Source source = Source.of(Kind.JPEG, small).with(jpeg.profile());
        try {
            return Optional.of(new Decoder("", source, Progress.NONE, new Meter(Progress.NONE)).decode());
        } catch (Trouble unreadable) {
            LOG.log(Level.FINE, "a photograph's own small picture cannot be read", unreadable);
            return Optional.empty();
        }
    }

    /** The middle of a picture, in proportions. */
    private static Picture cut(Picture picture, double ratio) {
        int width = Math.max(1, Math.min(picture.width(), (int) Math.round(picture.height() * ratio)));
        int height = Math.max(1, Math.min(picture.height(), (int) Math.round(picture.width() / ratio)));
        if (width == picture.width() && height == picture.height()) {
            return picture;
        }
        int left = (picture.width() - width) / 2;
        int top = (picture.height() - height) / 2;
        int[] pixels = new int[width * height];
        for (int y = 0; y < height; y++) {
            System.arraycopy(picture.pixels(), (top + y) * picture.width() + left, pixels, y * width, width);
        }
        return new Picture(width, height, pixels);
    }
}
