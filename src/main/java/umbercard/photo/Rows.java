package umbercard.photo;

import java.util.ArrayList;
import java.util.List;

/** Planes of light made row by row, so that what is made of a row next still finds it in the processor's cache. */
interface Rows {
    int width();

    int height();

    /** How many planes there are. */
    int planes();

    /** Makes rows on one thread; another needs another maker. */
    Maker maker();

    /** Makes one row after the other. */
    interface Maker {
        /** Makes row {@code y} of all planes; quickest when rows are asked for in turn. */
        void make(int y, float[][] into);
    }

    /** All rows as planes. */
    default List<Plane> whole() {
        float[][] samples = new float[planes()][width() * height()];
        Bands.each(height(), (from, to) -> {
            Maker maker = maker();
            float[][] row = new float[planes()][width()];
            for (int y = from; y < to; y++) {
                maker.make(y, row);
                for (int c = 0; c < row.length; c++) {
                    System.arraycopy(row[c], 0, samples[c], y * width(), width());
                }
            }
        });
        List<Plane> whole = new ArrayList<>();
        for (float[] plane : samples) {
            whole.add(new Plane(width(), height(), plane));
        }
        return whole;
    }
}
