package umbercard.photo;

import java.util.concurrent.CancellationException;

/**
 * How far a decoder has come, told from the bytes it took and the rows it gave, since some take all bytes before the first
 * row and some row by row. Each telling asks whether to stop.
 */
final class Meter {
    private static final double OF_BYTES = 0.8;

    private final Progress progress;
    private double bytes;
    private double rows;

    Meter(Progress progress) {
        this.progress = progress;
        progress.at(0);
    }

    /**
     * The decoder has taken the file's bytes up to a share, 0..1.
     *
     * @throws CancellationException once stopped
     */
    void bytes(double share) {
        bytes = Math.max(bytes, share);
        tell();
    }

    /**
     * The decoder has given a share, 0..1, of its rows.
     *
     * @throws CancellationException once stopped
     */
    void rows(double share) {
        rows = Math.max(rows, share);
        tell();
    }

    private void tell() {
        progress.at(Math.min(1, OF_BYTES * bytes + (1 - OF_BYTES) * rows));
        if (progress.stopped()) {
            throw new CancellationException("reading a photograph was stopped");
        }
    }
}
