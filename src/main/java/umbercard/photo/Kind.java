package umbercard.photo;

import com.drew.imaging.FileType;
import com.drew.imaging.FileTypeDetector;
import java.io.BufferedInputStream;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import umbercard.words.Message;
import umbercard.words.Trouble;

/** The kinds of picture that are read. A file's content decides; its name only where the content leaves camera raw open. */
enum Kind {
    JPEG,
    PNG,
    TIFF,
    WEBP,
    BMP,
    GIF;

    /** The detector takes many a TIFF file for the raw of one make, which is itself TIFF: its tags tell. */
    private static final Map<FileType, Kind> READ = Map.of(
            FileType.Jpeg, JPEG,
            FileType.Png, PNG,
            FileType.Tiff, TIFF,
            FileType.Arw, TIFF,
            FileType.WebP, WEBP,
            FileType.Bmp, BMP,
            FileType.Gif, GIF);

    private static final Set<FileType> RAW =
            Set.of(FileType.Crw, FileType.Cr2, FileType.Nef, FileType.Orf, FileType.Raf, FileType.Rw2, FileType.Crx);
    private static final Set<FileType> OTHER_PICTURES =
            Set.of(FileType.Psd, FileType.Ico, FileType.Pcx, FileType.Eps, FileType.Pdf);
    private static final Set<String> RAW_SUFFIXES =
            Set.of("dng", "nef", "nrw", "arw", "srw", "pef", "cr2", "cr3", "crw", "orf", "raf", "rw2", "3fr", "iiq");

    /** Brands of ISO/IEC 23008-12 that the detector does not tell from a film. */
    private static final Set<String> MORE_HEIF = Set.of("heim", "heis", "hevm", "hevs");

    private static final Set<String> AVIF = Set.of("avif", "avis");

    /**
     * What a file holds.
     *
     * @throws Trouble for what is not read, with a sentence that says what to do about it
     */
    static Kind of(String fileName, byte[] bytes) throws Trouble {
        FileType type = detect(bytes);
        String brand = brand(bytes);
        if (type == FileType.Heif || MORE_HEIF.contains(brand)) {
            throw refusal("photo.heic", fileName);
        }
        Optional<Kind> read = Optional.ofNullable(READ.get(type));
        boolean rawTiff = read.equals(Optional.of(TIFF))
                && (RAW_SUFFIXES.contains(suffix(fileName))
                        || Exif.of(TIFF, bytes).isRaw());
        if (RAW.contains(type) || rawTiff) {
            throw refusal("photo.raw", fileName);
        }
        return read.orElseThrow(() -> refusal(
                OTHER_PICTURES.contains(type) || AVIF.contains(brand) ? "photo.other-kind" : "photo.no-image",
                fileName));
    }

    private static Trouble refusal(String key, String fileName) {
        return new Trouble(Message.of(key, fileName));
    }

    private static FileType detect(byte[] bytes) {
        try {
            return FileTypeDetector.detectFileType(new BufferedInputStream(new ByteArrayInputStream(bytes)));
        } catch (IOException tooShort) {
            return FileType.Unknown;
        }
    }

    private static String brand(byte[] bytes) {
        if (bytes.length < 12 || !"ftyp".equals(new String(bytes, 4, 4, StandardCharsets.ISO_8859_1))) {
            return "";
        }
        return new String(bytes, 8, 4, StandardCharsets.ISO_8859_1);
    }

    private static String suffix(String fileName) {
        return fileName.substring(fileName.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    }
}
