package umbercard.photo;

import umbercard.picture.Picture;

/** Turning a photograph upright. Source: TIFF 6.0 and CIPA DC-008, tag Orientation (0x0112), values 1 to 8. */
final class Orientation {
    static final int UPRIGHT = 1;

    private Orientation() {}

    /** Whether width and height change places. */
    static boolean swaps(int tag) {
        return tag >= 5;
    }

    /** The stored picture as it is to be seen. */
    static Picture upright(Picture stored, int tag) {
        if (tag == UPRIGHT) {
            return stored;
        }
        int w = stored.width();
        int h = stored.height();
        boolean swaps = swaps(tag);
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
