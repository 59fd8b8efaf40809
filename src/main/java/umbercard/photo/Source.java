package umbercard.photo;

import java.awt.color.ColorSpace;
import java.awt.image.DataBuffer;
import java.io.IOException;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.IIOException;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.stream.ImageInputStream;

/** A file made ready for a decoder: its bytes, its color profile, and whether its rows come one by one from the top. */
final class Source {
    private static final String TOOLKITS_OWN = "com.sun.imageio.";

    private final byte[] bytes;
    private final Optional<byte[]> profile;
    private final boolean inRows;
    private final int jpegComponents;

    private Source(byte[] bytes, Optional<byte[]> profile, boolean inRows, int jpegComponents) {
        this.bytes = bytes;
        this.profile = profile;
        this.inRows = inRows;
        this.jpegComponents = jpegComponents;
    }

    static Source of(Kind kind, byte[] file) {
        return switch (kind) {
            case JPEG -> ofJpeg(JpegFile.of(file), file);
            case PNG -> {
                PngFile png = new PngFile(file);
                yield new Source(file, png.profile(), !png.isInterlaced(), 0);
            }
            case TIFF, WEBP, BMP, GIF -> new Source(file, Optional.empty(), false, 0);
        };
    }

    /** Inks and rare codings are left to the library's decoder, which takes care of their profile too. */
    private static Source ofJpeg(JpegFile jpeg, byte[] file) {
        return jpeg.isOrdinary()
                ? new Source(jpeg.plain(), jpeg.profile(), true, jpeg.components())
                : new Source(file, Optional.empty(), false, 0);
    }

    /** The same with another profile. */
    Source with(Optional<byte[]> other) {
        return new Source(bytes, other, inRows, jpegComponents);
    }

    byte[] bytes() {
        return bytes;
    }

    /** The embedded profile, where the decoder does not follow it. */
    Optional<byte[]> profile() {
        return profile;
    }

    /** Whether each row comes once, from the top. */
    boolean inRows() {
        return inRows;
    }

    /** A decoder for it. Of rows that come one by one the toolkit's own is the quickest. */
    ImageReader reader(ImageInputStream in) throws IOException {
        Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
        if (!readers.hasNext()) {
            throw new IIOException("no decoder takes the file");
        }
        ImageReader reader = readers.next();
        while (inRows && readers.hasNext() && !reader.getClass().getName().startsWith(TOOLKITS_OWN)) {
            reader.dispose();
            reader = readers.next();
        }
        return reader;
    }

    /** In which form the decoder is to give the pixels. */
    ImageTypeSpecifier form(ImageReader reader) throws IOException {
        if (jpegComponents == 3) {
            // In the order the decoder makes them, so that a row is copied as one piece.
            return ImageTypeSpecifier.createInterleaved(
                    ColorSpace.getInstance(ColorSpace.CS_sRGB),
                    new int[] {0, 1, 2},
                    DataBuffer.TYPE_BYTE,
                    false,
                    false);
        }
        if (jpegComponents == 1) {
            return ImageTypeSpecifier.createGrayscale(8, DataBuffer.TYPE_BYTE, false);
        }
        Iterator<ImageTypeSpecifier> forms = reader.getImageTypes(0);
        if (!forms.hasNext()) {
            throw new IIOException("the decoder knows no form for the pixels");
        }
        return forms.next();
    }
}
