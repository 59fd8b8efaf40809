package umbercard.photo;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.lang.ByteArrayReader;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifDirectoryBase;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifReader;
import com.drew.metadata.exif.ExifThumbnailDirectory;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.logging.Level;
import java.util.logging.Logger;

/** What a photograph's camera noted about it (CIPA DC-008, TIFF 6.0). */
final class Exif {
    private static final Logger LOG = Logger.getLogger(Exif.class.getName());

    /** The version of the DNG specification that a file follows: only camera raw has it. */
    private static final int DNG_VERSION = 0xc612;

    /** Samples straight from the sensor: color filter array (ISO 12234-2) and linear raw (DNG specification). */
    private static final Set<Integer> RAW_SAMPLES = Set.of(32803, 34892);

    private final Metadata metadata;
    private final byte[] tiff;

    private Exif(Metadata metadata, byte[] tiff) {
        this.metadata = metadata;
        this.tiff = tiff;
    }

    /** What a file of a kind carries; nothing where it cannot be read. */
    static Exif of(Kind kind, byte[] file) {
        return switch (kind) {
            case JPEG -> ofTiff(JpegFile.of(file).exif().orElseGet(() -> new byte[0]));
            case TIFF -> ofTiff(file);
            case PNG, WEBP -> ofChunks(file);
            case BMP, GIF -> new Exif(new Metadata(), new byte[0]);
        };
    }

    private static Exif ofTiff(byte[] tiff) {
        Metadata metadata = new Metadata();
        if (tiff.length > 0) {
            new ExifReader().extract(new ByteArrayReader(tiff), metadata);
        }
        return new Exif(metadata, tiff);
    }

    private static Exif ofChunks(byte[] file) {
        try {
            return new Exif(ImageMetadataReader.readMetadata(new ByteArrayInputStream(file), file.length), new byte[0]);
        } catch (ImageProcessingException | IOException unreadable) {
            LOG.log(Level.FINE, "the notes of a photograph could not be read", unreadable);
            return new Exif(new Metadata(), new byte[0]);
        }
    }

    /** Which way up it was taken: the tag Orientation (0x0112), 1 to 8; 1 for anything else (common practice). */
    int orientation() {
        return metadata.getDirectoriesOfType(ExifIFD0Directory.class).stream()
                .map(directory -> directory.getInteger(ExifDirectoryBase.TAG_ORIENTATION))
                .filter(tag -> tag != null && tag >= 1 && tag <= 8)
                .findFirst()
                .orElse(Orientation.UPRIGHT);
    }

    /** The JPEG of the small picture that the camera put beside the large one. */
    Optional<byte[]> thumbnail() {
        ExifThumbnailDirectory directory = metadata.getFirstDirectoryOfType(ExifThumbnailDirectory.class);
        if (directory == null) {
            return Optional.empty();
        }
        Integer from = directory.getInteger(ExifThumbnailDirectory.TAG_THUMBNAIL_OFFSET);
        Integer length = directory.getInteger(ExifThumbnailDirectory.TAG_THUMBNAIL_LENGTH);
        boolean inside = from != null && length != null && from >= 0 && length > 0 && length <= tiff.length - from;
        return inside ? Optional.of(Arrays.copyOfRange(tiff, from, from + length)) : Optional.empty();
    }

    /** Whether the file holds what a sensor saw, to be developed first. */
    boolean isRaw() {
        return metadata.getDirectoriesOfType(ExifDirectoryBase.class).stream().anyMatch(directory -> {
            Integer samples = directory.getInteger(ExifDirectoryBase.TAG_PHOTOMETRIC_INTERPRETATION);
            return directory.containsTag(DNG_VERSION) || (samples != null && RAW_SAMPLES.contains(samples));
        });
    }
}
