package umbercard.photo;

import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.awt.image.SampleModel;
import java.io.EOFException;
import java.io.IOException;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageTypeSpecifier;
import org.jspecify.annotations.Nullable;
import umbercard.picture.Picture;
import umbercard.words.Message;
import umbercard.words.Trouble;

/** Decodes one file to a working picture, not yet turned upright. */
final class Decoder {
    /** How much of the memory that the program may have a picture may take that must stand in it whole. */
    private static final double SHARE_OF_MEMORY = 0.6;

    /** The most that such a picture and its file may take together, in bytes. */
    private static final long MOST_MEMORY = 1L << 30;

    private final String fileName;
    private final Source source;
    private final Progress progress;
    private final Meter meter;
    private boolean incomplete;
    private boolean corrupt;

    Decoder(String fileName, Source source, Progress progress, Meter meter) {
        this.fileName = fileName;
        this.source = source;
        this.progress = progress;
        this.meter = meter;
    }

    /**
     * The working picture.
     *
     * @throws CancellationException when {@code progress} is stopped
     */
    Picture decode() throws Trouble {
        try (WatchedInput in = new WatchedInput(source.bytes(), meter)) {
            ImageReader reader = source.reader(in);
            try {
                reader.setInput(in, false, true);
                reader.addIIOReadWarningListener((from, warning) -> warned(warning));
                requireFewEnough(reader);
                return source.inRows() ? inRows(reader) : whole(reader);
            } finally {
                reader.dispose();
            }
        } catch (Trouble | CancellationException told) {
            throw told;
        } catch (IOException | RuntimeException failure) {
            // Decoders meet broken files with all kinds of unchecked exceptions; none of them is the painter's concern.
            throw refusal(failure);
        } catch (OutOfMemoryError full) {
            throw new Trouble(Message.of("photo.too-large", fileName), full);
        }
    }

    private void warned(String warning) {
        if (warning.contains("Missing EOI") || warning.contains("premature end")) {
            incomplete = true;
        } else if (warning.contains("Corrupt JPEG data") && !warning.contains("extraneous bytes")) {
            corrupt = true;
        }
    }

    private void requireFewEnough(ImageReader reader) throws IOException {
        long pixels = (long) reader.getWidth(0) * reader.getHeight(0);
        if (pixels > PhotoReader.MOST_PIXELS) {
            throw new Trouble(
                    Message.of("photo.too-many", fileName, pixels / 1_000_000, PhotoReader.MOST_PIXELS / 1_000_000));
        }
    }

    private Picture inRows(ImageReader reader) throws IOException {
        ImageTypeSpecifier form = source.form(reader);
        SampleModel samples = form.getSampleModel(reader.getWidth(0), reader.getHeight(0));
        LinearRows light = new LinearRows(form.getColorModel(), source.profile(), samples.getWidth());
        try (Reduction reduction = new Reduction(samples, light, meter)) {
            StripRaster raster = new StripRaster(samples, reduction);
            Optional<Exception> failure = attempt(reader, new BufferedImage(form.getColorModel(), raster, false, null));
            raster.end();
            return judged(reduction, raster.rows() < samples.getHeight(), failure);
        }
    }

    private Picture whole(ImageReader reader) throws IOException {
        ImageTypeSpecifier form = source.form(reader);
        int width = reader.getWidth(0);
        int height = reader.getHeight(0);
        requireRoom(form.getSampleModel(), (long) width * height);
        BufferedImage image = form.createBufferedImage(width, height);
        Optional<Exception> failure = attempt(reader, image);
        LinearRows light = new LinearRows(image.getColorModel(), source.profile(), width);
        try (Reduction reduction = new Reduction(image.getSampleModel(), light, meter)) {
            reduction.takeAll(image.getRaster(), failure.isPresent() ? written(image.getRaster()) : height);
            return judged(reduction, false, failure);
        }
    }

    private void requireRoom(SampleModel form, long pixels) throws Trouble {
        long bytes = pixels * form.getNumBands() * DataBuffer.getDataTypeSize(form.getDataType()) / 8;
        if (bytes + source.bytes().length > MOST_MEMORY
                || bytes > SHARE_OF_MEMORY * Runtime.getRuntime().maxMemory()) {
            throw new Trouble(Message.of("photo.too-large", fileName));
        }
    }

    /** Reads into {@code image}, as far as that goes; why it went no further. */
    private static Optional<Exception> attempt(ImageReader reader, BufferedImage image) {
        ImageReadParam into = reader.getDefaultReadParam();
        into.setDestination(image);
        try {
            reader.read(0, into);
            return Optional.empty();
        } catch (CancellationException stopped) {
            throw stopped;
        } catch (IOException | RuntimeException failure) {
            return Optional.of(failure);
        }
    }

    /** How many rows a decoder that failed has written: those below are as they were made, all zero. */
    private static int written(Raster raster) {
        int[] row = new int[raster.getWidth() * raster.getNumBands()];
        int rows = raster.getHeight();
        while (rows > 0
                && Arrays.stream(raster.getPixels(0, rows - 1, raster.getWidth(), 1, row))
                        .allMatch(i -> i == 0)) {
            rows--;
        }
        return rows;
    }

    private Picture judged(Reduction reduction, boolean missesRows, Optional<Exception> failure) throws Trouble {
        Picture picture = reduction.picture();
        incomplete |= missesRows && failure.isEmpty();
        if (!incomplete && !corrupt && failure.isEmpty()) {
            return picture;
        }
        boolean early = incomplete || failure.filter(Decoder::isEarlyEnd).isPresent();
        boolean nothing = Arrays.stream(picture.pixels()).allMatch(rgb -> rgb == picture.pixels()[0]);
        if (nothing
                || !progress.takesPart(Message.of(early ? "photo.incomplete.shown" : "photo.broken.shown", fileName))) {
            throw refusal(failure.orElse(null));
        }
        return picture;
    }

    private Trouble refusal(@Nullable Exception failure) {
        boolean early = incomplete || (failure != null && isEarlyEnd(failure));
        Message said = Message.of(early ? "photo.incomplete" : "photo.broken", fileName);
        return failure == null ? new Trouble(said) : new Trouble(said, failure);
    }

    private static boolean isEarlyEnd(Throwable failure) {
        return Stream.<@Nullable Throwable>iterate(failure, cause -> cause != null, Throwable::getCause)
                .anyMatch(EOFException.class::isInstance);
    }
}
