package umbercard.photo;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.zip.InflaterInputStream;

/** What a PNG file says before its picture data. Source: W3C, Portable Network Graphics, 11.2.2 (IHDR) and 11.3.3.3 (iCCP). */
final class PngFile {
    private static final Logger LOG = Logger.getLogger(PngFile.class.getName());
    private static final int FIRST_CHUNK = 8;
    private static final int INTERLACE = FIRST_CHUNK + 8 + 12;
    private static final int MOST_PROFILE = 1 << 24;

    private final byte[] bytes;

    PngFile(byte[] bytes) {
        this.bytes = bytes;
    }

    /** Whether the rows come in several passes. */
    boolean isInterlaced() {
        return bytes.length > INTERLACE && bytes[INTERLACE] != 0;
    }

    /** The embedded color profile. */
    Optional<byte[]> profile() {
        ByteBuffer file = ByteBuffer.wrap(bytes);
        int at = FIRST_CHUNK;
        while (at + 8 <= bytes.length) {
            int length = file.getInt(at);
            int kind = file.getInt(at + 4);
            if (length < 0 || length > bytes.length - at - 8 || kind == name("IDAT")) {
                return Optional.empty();
            }
            if (kind == name("iCCP")) {
                return inflated(at + 8, length);
            }
            at += length + 12;
        }
        return Optional.empty();
    }

    private static int name(String chunk) {
        return chunk.charAt(0) << 24 | chunk.charAt(1) << 16 | chunk.charAt(2) << 8 | chunk.charAt(3);
    }

    /** A name, a zero, the kind of compression, which is always the same, and the profile. */
    private Optional<byte[]> inflated(int from, int length) {
        int start = from;
        while (start < from + length && bytes[start] != 0) {
            start++;
        }
        start = Math.min(start + 2, from + length);
        try (var profile = new InflaterInputStream(new ByteArrayInputStream(bytes, start, from + length - start))) {
            return Optional.of(profile.readNBytes(MOST_PROFILE));
        } catch (IOException broken) {
            LOG.log(Level.FINE, "an embedded color profile cannot be unpacked", broken);
            return Optional.empty();
        }
    }
}
