package umbercard.photo;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import umbercard.picture.Picture;

/** Files of several formats made by hand for the tests, so that they carry what the writers at hand cannot write. */
public final class Formats {
    private Formats() {}

    /** EXIF data that hold the orientation alone: TIFF 6.0, tag 0x0112, SHORT. */
    static byte[] exif(int orientation) {
        return ByteBuffer.allocate(8 + 2 + 12 + 4)
                .put("MM".getBytes(StandardCharsets.ISO_8859_1))
                .putShort((short) 42)
                .putInt(8)
                .putShort((short) 1)
                .put(entry(ByteOrder.BIG_ENDIAN, 0x0112, 3, 1, orientation << 16))
                .putInt(0)
                .array();
    }

    private static byte[] entry(ByteOrder order, int tag, int type, int count, int value) {
        return ByteBuffer.allocate(12)
                .order(order)
                .putShort((short) tag)
                .putShort((short) type)
                .putInt(count)
                .putInt(value)
                .array();
    }

    /** An uncompressed TIFF 6.0 file in 8-bit RGB, least byte first, its directory at its head, with further entries. */
    static byte[] tiff(Picture picture, int[]... more) {
        int count = 9 + more.length;
        int bits = 8 + 2 + 12 * count + 4;
        int samples = bits + 6;
        ByteBuffer file =
                ByteBuffer.allocate(samples + 3 * picture.pixels().length).order(ByteOrder.LITTLE_ENDIAN);
        file.put("II".getBytes(StandardCharsets.ISO_8859_1))
                .putShort((short) 42)
                .putInt(8);
        int[][] entries = {
            {256, 4, 1, picture.width()},
            {257, 4, 1, picture.height()},
            {258, 3, 3, bits},
            {259, 3, 1, 1},
            {262, 3, 1, 2},
            {273, 4, 1, samples},
            {277, 3, 1, 3},
            {278, 4, 1, picture.height()},
            {279, 4, 1, 3 * picture.pixels().length}
        };
        int[][] all = Arrays.copyOf(entries, count);
        System.arraycopy(more, 0, all, entries.length, more.length);
        Arrays.sort(all, (a, b) -> Integer.compare(a[0], b[0]));
        file.putShort((short) count);
        for (int[] e : all) {
            file.put(entry(ByteOrder.LITTLE_ENDIAN, e[0], e[1], e[2], e[3]));
        }
        file.putInt(0);
        for (int i = 0; i < 3; i++) {
            file.putShort((short) 8);
        }
        for (int rgb : picture.pixels()) {
            file.put((byte) (rgb >> 16)).put((byte) (rgb >> 8)).put((byte) rgb);
        }
        return file.array();
    }

    /** The same PNG with one more chunk right after the header. */
    static byte[] withChunk(byte[] png, String name, byte[] content) {
        CRC32 sum = new CRC32();
        sum.update(name.getBytes(StandardCharsets.ISO_8859_1));
        sum.update(content);
        int head = 8 + 25;
        return ByteBuffer.allocate(png.length + 12 + content.length)
                .put(png, 0, head)
                .putInt(content.length)
                .put(name.getBytes(StandardCharsets.ISO_8859_1))
                .put(content)
                .putInt((int) sum.getValue())
                .put(png, head, png.length - head)
                .array();
    }

    /** The same PNG with a color profile (W3C PNG, 11.3.3.3). */
    static byte[] profiledPng(byte[] png, byte[] profile) {
        Deflater deflater = new Deflater();
        deflater.setInput(profile);
        deflater.finish();
        byte[] packed = new byte[profile.length + 100];
        int length = deflater.deflate(packed);
        deflater.end();
        ByteBuffer content = ByteBuffer.allocate(6 + length)
                .put("test".getBytes(StandardCharsets.ISO_8859_1))
                .put((byte) 0)
                .put((byte) 0)
                .put(packed, 0, length);
        return withChunk(png, "iCCP", content.array());
    }

    /** A lossless WebP file in its extended form with EXIF data (RFC 9649, 2.7) around the picture of a plain one. */
    static byte[] exifWebp(byte[] plain, int width, int height, byte[] exif) {
        byte[] picture = Arrays.copyOfRange(plain, 12, plain.length);
        ByteBuffer file =
                ByteBuffer.allocate(12 + 18 + picture.length + 8 + exif.length).order(ByteOrder.LITTLE_ENDIAN);
        file.put(name("RIFF")).putInt(file.capacity() - 8).put(name("WEBP"));
        file.put(name("VP8X")).putInt(10).putInt(0x08).put(three(width - 1)).put(three(height - 1));
        return file.put(picture).put(name("EXIF")).putInt(exif.length).put(exif).array();
    }

    private static byte[] name(String chunk) {
        return chunk.getBytes(StandardCharsets.ISO_8859_1);
    }

    private static byte[] three(int value) {
        return new byte[] {(byte) value, (byte) (value >> 8), (byte) (value >> 16)};
    }

    /**
     * A JPEG as a camera writes it: EXIF with an orientation and a small JPEG beside the large one (CIPA DC-008, 4.5.8, in
     * the second directory).
     */
    public static byte[] withThumbnail(byte[] jpeg, byte[] small, int orientation) throws IOException {
        int second = 8 + 2 + 12 + 4;
        int start = second + 2 + 3 * 12 + 4;
        ByteBuffer exif = ByteBuffer.allocate(6 + start + small.length);
        exif.put("Exif\0\0MM".getBytes(StandardCharsets.ISO_8859_1))
                .putShort((short) 42)
                .putInt(8);
        exif.putShort((short) 1)
                .put(entry(ByteOrder.BIG_ENDIAN, 0x0112, 3, 1, orientation << 16))
                .putInt(second);
        exif.putShort((short) 3)
                .put(entry(ByteOrder.BIG_ENDIAN, 0x0103, 3, 1, 6 << 16))
                .put(entry(ByteOrder.BIG_ENDIAN, 0x0201, 4, 1, start))
                .put(entry(ByteOrder.BIG_ENDIAN, 0x0202, 4, 1, small.length))
                .putInt(0);
        exif.put(small);
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.write(jpeg, 0, 2);
        file.write(ByteBuffer.allocate(4)
                .putShort((short) 0xffe1)
                .putShort((short) (exif.capacity() + 2))
                .array());
        file.write(exif.array());
        file.write(jpeg, 2, jpeg.length - 2);
        return file.toByteArray();
    }

    static byte[] written(Picture picture, String format) throws IOException {
        return Photographs.bytes(Photographs.image(picture, BufferedImage.TYPE_INT_RGB), format, 1, false);
    }
}
