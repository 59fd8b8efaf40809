package umbercard.photo;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.concurrent.CancellationException;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import umbercard.geometry.Size;
import umbercard.kernel.EventThread;
import umbercard.picture.Picture;
import umbercard.words.Message;
import umbercard.words.Trouble;

/**
 * Reads a photograph as an upright working picture in sRGB: JPEG (baseline and progressive, gray, color, CMYK and YCCK),
 * PNG (8 and 16 bits, palette), TIFF, WebP, BMP, and the first picture of a GIF; transparency is laid on white. An embedded
 * color profile is followed; where the file says nothing, its colors are sRGB. The long side is {@value #LONG_SIDE} pixels
 * at most; larger photographs are reduced by exact area averaging in linear light, smaller ones come as they are. JPEG and
 * PNG whose rows come one by one from the top never stand in memory whole; other pictures may take 1 GB with their file.
 */
public final class PhotoReader {
    /** The most pixels that the long side of a working picture has. */
    public static final int LONG_SIDE = 2000;

    /** The most pixels that a photograph may have, told from its header before anything is decoded. */
    public static final long MOST_PIXELS = 250_000_000;

    private static final long MOST_BYTES = 1L << 29;
    private static final int PIECE = 1 << 18;

    private PhotoReader() {}

    /**
     * Reads a file.
     *
     * @throws Trouble with one sentence that names the file and the remedy, if it is missing, empty, unreadable, broken or
     *     cut short and no {@linkplain Progress#takesPart part} of it wanted, no picture, of a kind not read here, or too large
     * @throws CancellationException once {@code progress} is stopped
     * @throws IllegalStateException on the event thread
     */
    public static Picture read(Path file, Progress progress) throws Trouble {
        return read(file.toString(), bytes(file, progress), progress);
    }

    /**
     * The bytes of a photograph's file, not looked into.
     *
     * @throws Trouble with one sentence that names the file and the remedy, if it is missing, a folder, unreadable or too large
     * @throws IllegalStateException on the event thread
     */
    public static byte[] bytes(Path file) throws Trouble {
        return bytes(file, Progress.NONE);
    }

    private static byte[] bytes(Path file, Progress progress) throws Trouble {
        EventThread.refuse("reading a photograph");
        String name = file.toString();
        try {
            if (Files.isDirectory(file)) {
                throw new Trouble(Message.of("photo.folder", name));
            }
            if (Files.size(file) > MOST_BYTES) {
                throw new Trouble(Message.of("photo.too-large", name));
            }
            return taken(file, progress);
        } catch (Trouble trouble) {
            throw trouble;
        } catch (NoSuchFileException missing) {
            throw new Trouble(Message.of("photo.missing", name), missing);
        } catch (IOException failure) {
            throw new Trouble(Message.of("photo.unreadable", name), failure);
        }
    }

    /** Piece by piece, since a file may lie at the far end of a slow network, and the painter may not want to wait. */
    private static byte[] taken(Path file, Progress progress) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            ByteArrayOutputStream all = new ByteArrayOutputStream((int) Files.size(file));
            byte[] piece = new byte[PIECE];
            for (int count = in.read(piece); count >= 0; count = in.read(piece)) {
                if (progress.stopped()) {
                    throw new CancellationException("reading a photograph was stopped");
                }
                all.write(piece, 0, count);
            }
            return all.toByteArray();
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
        Kind kind = Kind.of(fileName, bytes);
        Meter meter = new Meter(progress);
        Exif exif = Exif.of(kind, bytes);
        if (kind == Kind.JPEG) {
            FirstSight.of(JpegFile.of(bytes), exif).ifPresent(progress::firstSight);
        }
        Picture stored = new Decoder(fileName, Source.of(kind, bytes), progress, meter).decode();
        meter.bytes(1);
        meter.rows(1);
        return Orientation.upright(stored, exif.orientation());
    }

    /**
     * The size in pixels, upright, that a photograph has in its file, of which the working picture may be a reduction.
     *
     * @throws Trouble as {@link #read(Path, Progress)} does
     */
    public static Size size(String fileName, byte[] bytes) throws Trouble {
        Kind kind = Kind.of(fileName, bytes);
        Source source = Source.of(kind, bytes);
        try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(source.bytes()))) {
            ImageReader reader = source.reader(in);
            try {
                reader.setInput(in, true, true);
                Size stored = new Size(reader.getWidth(0), reader.getHeight(0));
                return Orientation.swaps(Exif.of(kind, bytes).orientation())
                        ? new Size(/* width= */ stored.height(), /* height= */ stored.width())
                        : stored;
            } finally {
                reader.dispose();
            }
        } catch (IOException | RuntimeException failure) {
            throw new Trouble(Message.of("photo.broken", fileName), failure);
        }
    }
}
