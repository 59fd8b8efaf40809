package umbercard.photo;

import java.awt.image.Raster;
import java.awt.image.SampleModel;
import java.awt.image.WritableRaster;
import java.util.Arrays;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import umbercard.picture.Picture;

/**
 * Makes the working picture of the strips that a decoder gives, on a thread of its own, so that averaging costs little time
 * beside decoding. Few strips are under way at once: a decoder that is faster has to wait.
 */
final class Reduction implements StripRaster.Taker, AutoCloseable {
    private static final int STRIPS = 4;
    private static final int STRIP_SAMPLES = 1 << 18;

    /** What stands for rows that are missing. */
    private static final byte MIDDLE_GRAY = (byte) 0x80;

    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "umbercard-reduction");
        thread.setDaemon(true);
        return thread;
    });
    private final BlockingQueue<WritableRaster> blanks = new ArrayBlockingQueue<>(STRIPS);
    private final SampleModel samples;
    private final Meter meter;
    private final LinearRows light;
    private AreaAverage average;
    private CompletableFuture<Void> done = CompletableFuture.completedFuture(null);
    private int made;
    private int taken;

    /**
     * To at most {@value PhotoReader#LONG_SIDE} pixels on the long side.
     *
     * @param samples the whole picture's layout and size
     */
    Reduction(SampleModel samples, LinearRows light, Meter meter) {
        this.samples = samples;
        this.meter = meter;
        this.light = light;
        average = begun();
    }

    private AreaAverage begun() {
        int width = samples.getWidth();
        int height = samples.getHeight();
        double scale = Math.min(1, (double) PhotoReader.LONG_SIDE / Math.max(width, height));
        return new AreaAverage(width, height, Math.max(1, (int) Math.round(scale * width)), Math.max(1, (int)
                Math.round(scale * height)));
    }

    /** How many rows a strip has. */
    private int stripHeight() {
        return Math.max(1, Math.min(samples.getHeight(), STRIP_SAMPLES / samples.getWidth() / samples.getNumBands()));
    }

    @Override
    public WritableRaster blank() {
        if (made < STRIPS) {
            made++;
            return Raster.createWritableRaster(
                    samples.createCompatibleSampleModel(samples.getWidth(), stripHeight()), null);
        }
        try {
            return blanks.take();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new CancellationException("reading a photograph was interrupted");
        }
    }

    @Override
    public void take(WritableRaster strip, int rows) {
        AreaAverage into = average;
        done = done.thenRunAsync(
                () -> {
                    light.feed(strip, rows, into);
                    blanks.add(strip);
                },
                worker);
        // Where a strip fails, the rest is not tried; the decoder must not wait for the strip to come back.
        if (done.isCompletedExceptionally()) {
            finish();
        }
        taken += rows;
        meter.rows((double) taken / samples.getHeight());
    }

    @Override
    public void again() {
        finish();
        average = begun();
        taken = 0;
    }

    /** Takes the first rows of a picture that stands in memory whole. */
    void takeAll(Raster whole, int rows) {
        for (int top = 0; top < rows; top += stripHeight()) {
            int height = Math.min(stripHeight(), rows - top);
            light.feed(whole.createChild(0, top, whole.getWidth(), height, 0, 0, null), height, average);
            taken += height;
            meter.rows((double) taken / samples.getHeight());
        }
    }

    /** The working picture, once all rows were taken; rows that are missing are {@linkplain #MIDDLE_GRAY middle gray}. */
    Picture picture() {
        finish();
        byte[] gray = new byte[3 * samples.getWidth()];
        Arrays.fill(gray, MIDDLE_GRAY);
        for (; taken < samples.getHeight(); taken++) {
            average.take(gray);
        }
        return average.picture();
    }

    private void finish() {
        try {
            done.join();
        } catch (CompletionException failure) {
            if (failure.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw failure;
        }
    }

    @Override
    public void close() {
        worker.shutdown();
    }
}
