package umbercard.photo;

import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;

/** Work on the rows of a picture, as many bands of them at once as there are processors. */
final class Bands {
    /** A band of fewer rows is not worth handing to another thread. */
    private static final int LEAST_ROWS = 16;

    /** So that a processor that is held up leaves some of its bands to the others. */
    private static final int BANDS_EACH = 4;

    /** Work on the rows from {@code from} up to but without {@code to}, which no other band touches. */
    interface Work {
        void rows(int from, int to);
    }

    private Bands() {}

    /** Does the work on all rows, and returns when it is done. */
    static void each(int rows, Work work) {
        int most = BANDS_EACH * (ForkJoinPool.getCommonPoolParallelism() + 1);
        int bands = Math.max(1, Math.min(most, rows / LEAST_ROWS));
        IntStream.range(0, bands)
                .parallel()
                .forEach(band -> work.rows(start(band, bands, rows), start(band + 1, bands, rows)));
    }

    private static int start(int band, int bands, int rows) {
        return (int) ((long) rows * band / bands);
    }
}
