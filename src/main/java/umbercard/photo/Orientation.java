package umbercard.photo;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.exif.ExifIFD0Directory;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.logging.Level;
import java.util.logging.Logger;
import umbercard.picture.Picture;

/**
 * Which way up a photograph was taken, and turning it upright. Source: TIFF 6.0 and CIPA DC-008, tag Orientation (0x0112),
 * values 1 to 8; anything else counts as 1, upright (common practice).
 */
final class Orientation {
    private static final Logger LOG = Logger.getLogger(Orientation.class.getName());
    private static final int UPRIGHT = 1;

    private Orientation() {}

    /** What the file says; 1 where it says nothing that can be read. */
    static int of(byte[] file) {
        try {
            return ImageMetadataReader.readMetadata(new ByteArrayInputStream(file), file.length)
                    .getDirectoriesOfType(ExifIFD0Directory.class)
                    .stream()
                    .map(directory -> directory.getInteger(ExifIFD0Directory.TAG_ORIENTATION))
                    .filter(tag -> tag != null && tag >= 1 && tag <= 8)
                    .findFirst()
                    .orElse(UPRIGHT);
        } catch (ImageProcessingException | IOException unreadable) {
            LOG.log(Level.FINE, "no orientation could be read", unreadable);
            return UPRIGHT;
        }
    }

    /** The stored picture as it is to be seen. */
    static Picture upright(Picture stored, int tag) {
        if (tag == UPRIGHT) {
            return stored;
        }
        int w = stored.width();
        int h = stored.height();
        boolean swaps = tag >= 5;
        int width = swaps ? h : w;
        int[] shown = new int[w * h];
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                int toX = swaps ? (tag == 6 || tag == 7 ? h - 1 - y : y) : (tag == 2 || tag == 3 ? w - 1 - x : x);
                int toY = swaps ? (tag == 7 || tag == 8 ? w - 1 - x : x) : (tag == 3 || tag == 4 ? h - 1 - y : y);
                shown[toY * width + toX] = stored.pixels()[y * w + x];
            }
        }
        return new Picture(width, swaps ? w : h, shown);
    }
}
