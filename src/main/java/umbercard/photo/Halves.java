package umbercard.photo;

import java.util.Collections;
import java.util.Map;
import java.util.WeakHashMap;
import umbercard.picture.Picture;

/**
 * Pictures at half their size, each pixel the mean of the light of the four it covers. Made once for a picture and kept as
 * long as that is, so that a frame that follows the hand is not held up. Safe for use by several threads.
 */
final class Halves {
    private static final Map<Picture, Picture> KNOWN = Collections.synchronizedMap(new WeakHashMap<>());

    private Halves() {}

    /** The picture at half its size; of an odd width or height the last pixels are the mean of the two they cover. */
    static Picture of(Picture picture) {
        return KNOWN.computeIfAbsent(picture, Halves::made);
    }

    private static Picture made(Picture picture) {
        int width = (picture.width() + 1) / 2;
        int height = (picture.height() + 1) / 2;
        int[] pixels = new int[width * height];
        for (int y = 0; y < height; y++) {
            int below = Math.min(picture.height() - 1, 2 * y + 1);
            for (int x = 0; x < width; x++) {
                int beside = Math.min(picture.width() - 1, 2 * x + 1);
                pixels[y * width + x] = mean(
                        picture.rgb(2 * x, 2 * y),
                        picture.rgb(beside, 2 * y),
                        picture.rgb(2 * x, below),
                        picture.rgb(beside, below));
            }
        }
        return new Picture(width, height, pixels);
    }

    private static int mean(int a, int b, int c, int d) {
        float[] light = LinearLight.OF_BYTE;
        return LinearLight.rgbOf(
                (light[a >> 16] + light[b >> 16] + light[c >> 16] + light[d >> 16]) / 4,
                (light[a >> 8 & 0xff] + light[b >> 8 & 0xff] + light[c >> 8 & 0xff] + light[d >> 8 & 0xff]) / 4,
                (light[a & 0xff] + light[b & 0xff] + light[c & 0xff] + light[d & 0xff]) / 4);
    }
}
