package umbercard.cards.svg;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import umbercard.picture.Picture;

/** A picture as a PNG of 8 bits a channel without alpha, so that a document can carry it. Source: ISO/IEC 15948 (PNG). */
final class Png {
    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};

    private Png() {}

    static byte[] of(Picture picture) {
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        png.writeBytes(SIGNATURE);
        byte depth = 8;
        byte trueColor = 2;
        byte[] header = ByteBuffer.allocate(13)
                .putInt(picture.width())
                .putInt(picture.height())
                .put(depth)
                .put(trueColor)
                .array();
        chunk(png, "IHDR", header);
        chunk(png, "IDAT", deflated(rows(picture)));
        chunk(png, "IEND", new byte[0]);
        return png.toByteArray();
    }

    /** Each row begins with its filter: 0, none. */
    private static byte[] rows(Picture picture) {
        ByteBuffer rows = ByteBuffer.allocate(picture.height() * (1 + 3 * picture.width()));
        for (int y = 0; y < picture.height(); y++) {
            rows.put((byte) 0);
            for (int x = 0; x < picture.width(); x++) {
                int rgb = picture.rgb(x, y);
                rows.put((byte) (rgb >> 16)).put((byte) (rgb >> 8)).put((byte) rgb);
            }
        }
        return rows.array();
    }

    private static byte[] deflated(byte[] bytes) {
        Deflater deflater = new Deflater();
        deflater.setInput(bytes);
        deflater.finish();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        byte[] buffer = new byte[8192];
        while (!deflater.finished()) {
            out.write(buffer, 0, deflater.deflate(buffer));
        }
        deflater.end();
        return out.toByteArray();
    }

    private static void chunk(ByteArrayOutputStream png, String name, byte[] content) {
        byte[] type = name.getBytes(StandardCharsets.US_ASCII);
        CRC32 check = new CRC32();
        check.update(type);
        check.update(content);
        png.writeBytes(ByteBuffer.allocate(4).putInt(content.length).array());
        png.writeBytes(type);
        png.writeBytes(content);
        png.writeBytes(ByteBuffer.allocate(4).putInt((int) check.getValue()).array());
    }
}
