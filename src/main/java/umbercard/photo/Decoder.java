package umbercard.photo;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.util.Iterator;
import java.util.concurrent.CancellationException;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.event.IIOReadProgressListener;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import umbercard.words.Message;
import umbercard.words.Trouble;

/** Decodes one JPEG or PNG whole, or not at all: the libraries show what they could of a broken file, this does not. */
final class Decoder {
    /** How much of the memory that the program may have a decoded photograph may take. */
    private static final double SHARE_OF_MEMORY = 0.6;

    private final String fileName;
    private final Progress progress;
    private boolean incomplete;
    private boolean corrupt;

    Decoder(String fileName, Progress progress) {
        this.fileName = fileName;
        this.progress = progress;
    }

    /**
     * The image as stored, not yet turned upright; progress runs from 0 to 1.
     *
     * @throws CancellationException when {@code progress} is stopped
     */
    BufferedImage decode(byte[] bytes) throws Trouble {
        try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                throw trouble("photo.broken");
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(in, true, true);
                return whole(reader);
            } finally {
                reader.dispose();
            }
        } catch (Trouble trouble) {
            throw trouble;
        } catch (EOFException early) {
            throw new Trouble(Message.of("photo.incomplete", fileName), early);
        } catch (IOException failure) {
            throw new Trouble(Message.of(incomplete ? "photo.incomplete" : "photo.broken", fileName), failure);
        }
    }

    private BufferedImage whole(ImageReader reader) throws IOException {
        listen(reader);
        try {
            requireRoom(reader);
            ImageReadParam plain = reader.getDefaultReadParam();
            BufferedImage image = reader.read(0, plain);
            requireNotStopped();
            if (incomplete || corrupt) {
                throw trouble(incomplete ? "photo.incomplete" : "photo.broken");
            }
            return image;
        } catch (CancellationException stopped) {
            throw stopped;
        } catch (OutOfMemoryError full) {
            throw new Trouble(Message.of("photo.too-large", fileName), full);
        } catch (RuntimeException failure) {
            // Decoders meet broken files with all kinds of unchecked exceptions; none of them is the painter's concern.
            throw new Trouble(Message.of("photo.broken", fileName), failure);
        }
    }

    private void requireRoom(ImageReader reader) throws IOException {
        long samples = (long) reader.getWidth(0) * reader.getHeight(0);
        Iterator<ImageTypeSpecifier> types = reader.getImageTypes(0);
        if (!types.hasNext()) {
            throw trouble("photo.broken");
        }
        var model = types.next().getSampleModel();
        long bytes = samples * model.getNumBands() * Math.max(1, model.getSampleSize(0) / 8);
        if (bytes > Integer.MAX_VALUE - 8
                || bytes > SHARE_OF_MEMORY * Runtime.getRuntime().maxMemory()) {
            throw trouble("photo.too-large");
        }
    }

    private void listen(ImageReader reader) {
        reader.addIIOReadWarningListener((source, warning) -> {
            if (warning.contains("Missing EOI") || warning.contains("premature end")) {
                incomplete = true;
            } else if (warning.contains("Corrupt JPEG data") && !warning.contains("extraneous bytes")) {
                corrupt = true;
            }
        });
        reader.addIIOReadProgressListener(new Watch());
    }

    private void requireNotStopped() {
        if (progress.stopped()) {
            throw new CancellationException("reading " + fileName + " was stopped");
        }
    }

    private Trouble trouble(String key) {
        return new Trouble(Message.of(key, fileName));
    }

    /** Passes progress on, and the wish to stop back. */
    private final class Watch implements IIOReadProgressListener {
        @Override
        public void imageProgress(ImageReader source, float percentage) {
            progress.at(Math.min(1, Math.max(0, percentage / 100)));
            if (progress.stopped()) {
                source.abort();
            }
        }

        @Override
        public void sequenceStarted(ImageReader source, int minIndex) {
            // One image a file: there is no sequence.
        }

        @Override
        public void sequenceComplete(ImageReader source) {
            // One image a file: there is no sequence.
        }

        @Override
        public void imageStarted(ImageReader source, int imageIndex) {
            progress.at(0);
        }

        @Override
        public void imageComplete(ImageReader source) {
            progress.at(1);
        }

        @Override
        public void thumbnailStarted(ImageReader source, int imageIndex, int thumbnailIndex) {
            // Thumbnails are not read.
        }

        @Override
        public void thumbnailProgress(ImageReader source, float percentage) {
            // Thumbnails are not read.
        }

        @Override
        public void thumbnailComplete(ImageReader source) {
            // Thumbnails are not read.
        }

        @Override
        public void readAborted(ImageReader source) {
            // Told by the progress itself, after the read returns.
        }
    }
}
