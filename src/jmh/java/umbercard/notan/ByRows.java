package umbercard.notan;

import umbercard.model.Thumbnail;

/** A reference that no overlay and no flattening takes part in: rows through the drawn curves. */
public final class ByRows {
    private ByRows() {}

    /** The dark share by that many rows, each midway through its strip; with n rows off by about n^-1.5. */
    public static double darkShare(Thumbnail thumbnail, double ratio, int rows) {
        double sum = 0;
        for (int i = 0; i < rows; i++) {
            sum += Drawings.row(thumbnail, ratio, (i + .5) / rows);
        }
        return sum / rows / ratio;
    }
}
