package umbercard.photo;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.concurrent.CancellationException;
import umbercard.kernel.EventThread;
import umbercard.picture.Picture;
import umbercard.words.Message;
import umbercard.words.Trouble;

/**
 * Reads a photograph (JPEG or PNG, 8 or 16 bits, gray, palette, transparency laid on white, CMYK) as an upright working
 * picture. The long side is {@value #LONG_SIDE} pixels at most; larger photographs are reduced by exact area averaging in
 * linear light, smaller ones come as they are. A photograph that is broken or cut short is refused, not half shown.
 */
public final class PhotoReader {
    /** The most pixels that the long side of a working picture has. */
    public static final int LONG_SIDE = 2000;

    private static final long MOST_BYTES = 1L << 29;
    private static final double DECODED = 0.8;

    private PhotoReader() {}

    /**
     * Reads a file.
     *
     * @throws Trouble with one sentence that names the file and the remedy, if it is missing, empty, unreadable, cut short,
     *     broken, no picture, of a kind not read here, or too large
     * @throws CancellationException once {@code progress} is stopped
     * @throws IllegalStateException on the event thread
     */
    public static Picture read(Path file, Progress progress) throws Trouble {
        return read(file.toString(), bytes(file), progress);
    }

    /**
     * The bytes of a photograph's file, not looked into.
     *
     * @throws Trouble with one sentence that names the file and the remedy, if it is missing, a folder, unreadable or too large
     * @throws IllegalStateException on the event thread
     */
    public static byte[] bytes(Path file) throws Trouble {
        EventThread.refuse("reading a photograph");
        String name = file.toString();
        try {
            if (Files.isDirectory(file)) {
                throw new Trouble(Message.of("photo.folder", name));
            }
            if (Files.size(file) > MOST_BYTES) {
                throw new Trouble(Message.of("photo.too-large", name));
            }
            return Files.readAllBytes(file);
        } catch (Trouble trouble) {
            throw trouble;
        } catch (NoSuchFileException missing) {
            throw new Trouble(Message.of("photo.missing", name), missing);
        } catch (IOException failure) {
            throw new Trouble(Message.of("photo.unreadable", name), failure);
        }
    }

    /**
     * Reads a file's bytes; the name is for the sentence, and tells camera raw from other files alike.
     *
     * @throws Trouble as {@link #read(Path, Progress)} does
     * @throws CancellationException once {@code progress} is stopped
     * @throws IllegalStateException on the event thread
     */
    public static Picture read(String fileName, byte[] bytes, Progress progress) throws Trouble {
        EventThread.refuse("reading a photograph");
        if (bytes.length == 0) {
            throw new Trouble(Message.of("photo.empty", fileName));
        }
        Kind.require(fileName, bytes);
        Picture stored = reduce(new Decoder(fileName, part(progress, 0, DECODED)).decode(bytes), progress);
        return Orientation.upright(stored, Orientation.of(bytes));
    }

    private static Picture reduce(BufferedImage image, Progress progress) {
        double scale = Math.min(1, (double) LONG_SIDE / Math.max(image.getWidth(), image.getHeight()));
        int width = Math.max(1, (int) Math.round(scale * image.getWidth()));
        int height = Math.max(1, (int) Math.round(scale * image.getHeight()));
        Progress rest = part(progress, DECODED, 1);
        LinearRows rows = new LinearRows(image);
        AreaAverage average = new AreaAverage(image.getWidth(), image.getHeight(), width, height);
        for (int y = 0; y < image.getHeight(); y++) {
            if (y % 64 == 0) {
                rest.at((double) y / image.getHeight());
                if (progress.stopped()) {
                    throw new CancellationException("reading a photograph was stopped");
                }
            }
            average.take(rows.row(y));
        }
        rest.at(1);
        return average.picture();
    }

    private static Progress part(Progress whole, double from, double to) {
        return new Progress() {
            @Override
            public void at(double share) {
                whole.at(from + share * (to - from));
            }

            @Override
            public boolean stopped() {
                return whole.stopped();
            }
        };
    }
}
