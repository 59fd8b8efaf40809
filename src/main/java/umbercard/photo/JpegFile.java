package umbercard.photo;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a JPEG file says before its picture data, and the same file without what decoders stumble over. Sources: ITU-T T.81,
 * annex B, for the segments; JFIF (ITU-T T.871); CIPA DC-008 for EXIF; ICC.1, annex B, for profiles in pieces. Which of them
 * decides on the color is what the Independent JPEG Group's decoder does: JFIF, then the Adobe marker, then the names of the
 * components; a file with EXIF alone is YCbCr, as CIPA DC-008 has it.
 */
final class JpegFile {
    private static final int START_OF_SCAN = 0xda;
    private static final int ADOBE = 0xee;
    private static final byte[] JFIF_HEAD = {
        (byte) 0xff, (byte) 0xe0, 0, 16, 'J', 'F', 'I', 'F', 0, 1, 1, 0, 0, 1, 0, 1, 0, 0
    };

    /** A marker segment: where it begins, and where its content begins and ends. */
    private record Segment(int marker, int start, int from, int to) {}

    private final byte[] bytes;
    private final List<Segment> segments = new ArrayList<>();
    private int scan;

    private JpegFile(byte[] bytes) {
        this.bytes = bytes;
    }

    static JpegFile of(byte[] bytes) {
        JpegFile file = new JpegFile(bytes);
        file.walk();
        return file;
    }

    private void walk() {
        int at = 2;
        scan = bytes.length;
        while (at + 4 <= bytes.length) {
            int marker = bytes[at + 1] & 0xff;
            if ((bytes[at] & 0xff) != 0xff || marker == 0xff) {
                at++;
            } else if (marker == START_OF_SCAN) {
                scan = at;
                return;
            } else if (marker <= 1 || (marker >= 0xd0 && marker <= 0xd9)) {
                at += 2;
            } else {
                int end = at + 2 + unsignedShort(at + 2);
                if (end > bytes.length) {
                    return;
                }
                segments.add(new Segment(marker, at, at + 4, end));
                at = end;
            }
        }
    }

    private int unsignedShort(int at) {
        return (bytes[at] & 0xff) << 8 | (bytes[at + 1] & 0xff);
    }

    /** The frame header: the one of the kinds SOF0 to SOF15. */
    private Optional<Segment> frame() {
        return segments.stream()
                .filter(s -> s.marker >= 0xc0 && s.marker <= 0xcf)
                .filter(s -> s.marker != 0xc4 && s.marker != 0xc8 && s.marker != 0xcc)
                .filter(s -> s.to - s.from >= 6)
                .findFirst();
    }

    /** How many components a pixel has; 0 where the file does not say. */
    int components() {
        return frame().map(s -> bytes[s.from + 5] & 0xff).orElse(0);
    }

    /** Stored pixels across; 0 where the file does not say. */
    int width() {
        return frame().map(s -> unsignedShort(s.from + 3)).orElse(0);
    }

    /** Stored pixels down; 0 where the file does not say. */
    int height() {
        return frame().map(s -> unsignedShort(s.from + 1)).orElse(0);
    }

    /** Whether it is gray or color in 8 bits, coded by baseline, extended or progressive Huffman coding. */
    boolean isOrdinary() {
        return frame().filter(s -> s.marker <= 0xc2 && bytes[s.from] == 8).isPresent()
                && (components() == 1 || components() == 3);
    }

    /** The embedded color profile, put together from its pieces. */
    Optional<byte[]> profile() {
        List<Segment> pieces = segments.stream()
                .filter(s -> s.marker == 0xe2 && s.to - s.from > 14 && begins(s, "ICC_PROFILE\0"))
                .sorted(Comparator.comparingInt(s -> bytes[s.from + 12] & 0xff))
                .toList();
        if (pieces.isEmpty()) {
            return Optional.empty();
        }
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        pieces.forEach(s -> whole.write(bytes, s.from + 14, s.to - s.from - 14));
        return Optional.of(whole.toByteArray());
    }

    /** The content of the EXIF segment after its name: a TIFF structure. */
    Optional<byte[]> exif() {
        return exifSegment().map(s -> Arrays.copyOfRange(bytes, s.from + 6, s.to));
    }

    private Optional<Segment> exifSegment() {
        return segments.stream()
                .filter(s -> s.marker == 0xe1 && begins(s, "Exif\0"))
                .findFirst();
    }

    private boolean begins(Segment segment, String name) {
        byte[] head = name.getBytes(StandardCharsets.ISO_8859_1);
        int end = Math.min(segment.to, segment.from + head.length);
        return Arrays.equals(bytes, segment.from, end, head, 0, head.length);
    }

    /** The file with what its decoding needs and no more: no profile, no thumbnail, no remarks, the color's kind made clear. */
    byte[] plain() {
        boolean jfif = segments.stream().anyMatch(s -> s.marker == 0xe0 && begins(s, "JFIF\0"));
        boolean adobe = segments.stream().anyMatch(s -> s.marker == ADOBE && begins(s, "Adobe"));
        boolean namedRgb = components() == 3
                && frame().filter(s -> s.to - s.from >= 15)
                        .filter(s -> bytes[s.from + 6] == 'R' && bytes[s.from + 9] == 'G' && bytes[s.from + 12] == 'B')
                        .isPresent();
        boolean byAdobe = adobe && !jfif;
        ByteArrayOutputStream plain = new ByteArrayOutputStream(bytes.length + JFIF_HEAD.length);
        plain.write(bytes, 0, 2);
        if (!byAdobe && (jfif || exifSegment().isPresent() || !namedRgb)) {
            plain.write(JFIF_HEAD, 0, JFIF_HEAD.length);
        }
        for (Segment segment : segments) {
            boolean application = (segment.marker >= 0xe0 && segment.marker <= 0xef) || segment.marker == 0xfe;
            if (!application || (segment.marker == ADOBE && byAdobe)) {
                plain.write(bytes, segment.start, segment.to - segment.start);
            }
        }
        plain.write(bytes, scan, bytes.length - scan);
        return plain.toByteArray();
    }
}
