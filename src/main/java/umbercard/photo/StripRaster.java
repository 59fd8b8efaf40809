package umbercard.photo;

import java.awt.Point;
import java.awt.Rectangle;
import java.awt.image.DataBufferByte;
import java.awt.image.Raster;
import java.awt.image.SampleModel;
import java.awt.image.WritableRaster;

/**
 * What a decoder takes for the whole picture it writes row after row, from the top: a strip of rows at a time is kept and
 * handed on when it is full, so that the whole picture never stands in memory. Where the rows come in several passes, each
 * pass begins anew.
 */
final class StripRaster extends WritableRaster {
    /** Where full strips go, and empty ones come from. */
    interface Taker {
        /** A strip to fill, of a width and a height that do not change. */
        WritableRaster blank();

        /** A strip whose first {@code rows} rows are filled. */
        void take(WritableRaster strip, int rows);

        /** All rows come again, better than before: what was taken so far counts no more. */
        void again();
    }

    private final Taker taker;
    private final int stripHeight;
    private WritableRaster strip;
    private int top;
    private int rows;

    /** A picture of the sample model's size, and strips of the height of those that {@code taker} gives. */
    StripRaster(SampleModel model, Taker taker) {
        super(model, new DataBufferByte(0), new Rectangle(model.getWidth(), model.getHeight()), new Point(), null);
        this.taker = taker;
        strip = taker.blank();
        stripHeight = strip.getHeight();
    }

    /** How many rows have come, the last one perhaps in part. */
    int rows() {
        return top + rows;
    }

    /** Hands on what the last strip holds; nothing can be written after that. */
    void end() {
        if (rows > 0) {
            taker.take(strip, rows);
            top += rows;
            rows = 0;
        }
    }

    @Override
    public void setRect(int x, int y, Raster source) {
        for (int i = 0; i < source.getHeight(); i++) {
            int row = place(y + source.getMinY() + i);
            Raster one = source.getHeight() == 1
                    ? source
                    : source.createChild(
                            source.getMinX(), source.getMinY() + i, source.getWidth(), 1, source.getMinX(), 0, null);
            strip.setRect(x, row - one.getMinY(), one);
        }
    }

    @Override
    public void setPixel(int x, int y, int[] samples) {
        // First the place: it may bring the next strip.
        int row = place(y);
        strip.setPixel(x, row, samples);
    }

    /** The row of the strip that stands for a row of the picture; a full strip is handed on before the next is begun. */
    private int place(int y) {
        if (y < top || (y == 0 && rows > 1)) {
            taker.again();
            top = 0;
            rows = 0;
        }
        while (y >= top + stripHeight) {
            taker.take(strip, stripHeight);
            strip = taker.blank();
            top += stripHeight;
            rows = 0;
        }
        rows = Math.max(rows, y - top + 1);
        return y - top;
    }
}
