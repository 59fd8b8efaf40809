package umbercard.photo;

import java.awt.Transparency;
import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.function.IntBinaryOperator;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import umbercard.picture.Picture;

/** Photographs made for the tests, and their bytes. */
public final class Photographs {
    private Photographs() {}

    public static Picture picture(int width, int height, IntBinaryOperator rgb) {
        int[] pixels = new int[width * height];
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] = rgb.applyAsInt(i % width, i / width);
        }
        return new Picture(width, height, pixels);
    }

    static Picture noise(int width, int height, long seed) {
        Random random = new Random(seed);
        return picture(width, height, (x, y) -> random.nextInt(1 << 24));
    }

    static BufferedImage image(Picture picture, int type) {
        BufferedImage image = new BufferedImage(picture.width(), picture.height(), type);
        image.setRGB(0, 0, picture.width(), picture.height(), picture.pixels(), 0, picture.width());
        return image;
    }

    static byte[] png(Picture picture) throws IOException {
        return bytes(image(picture, BufferedImage.TYPE_INT_RGB), "png", 1, false);
    }

    public static byte[] jpeg(Picture picture) throws IOException {
        return bytes(image(picture, BufferedImage.TYPE_INT_RGB), "jpeg", 0.95f, false);
    }

    static byte[] bytes(BufferedImage image, String format, float quality, boolean progressive) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName(format).next();
        ImageWriteParam settings = writer.getDefaultWriteParam();
        if (format.equals("jpeg")) {
            settings.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            settings.setCompressionQuality(quality);
            settings.setProgressiveMode(progressive ? ImageWriteParam.MODE_DEFAULT : ImageWriteParam.MODE_DISABLED);
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (var stream = ImageIO.createImageOutputStream(out)) {
            writer.setOutput(stream);
            writer.write(null, new IIOImage(image, List.of(), null), settings);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }

    /** A deep PNG, each sample as given. */
    static byte[] deepPng(int width, int height, boolean alpha, int... samples) throws IOException {
        var space = ColorSpace.getInstance(ColorSpace.CS_sRGB);
        var model = new ComponentColorModel(
                space, alpha, false, alpha ? Transparency.TRANSLUCENT : Transparency.OPAQUE, DataBuffer.TYPE_USHORT);
        var raster = model.createCompatibleWritableRaster(width, height);
        raster.setPixels(0, 0, width, height, samples);
        return bytes(new BufferedImage(model, raster, false, null), "png", 1, false);
    }

    static byte[] grayPng(int width, int height, int type, int... samples) throws IOException {
        BufferedImage image = new BufferedImage(width, height, type);
        image.getRaster().setPixels(0, 0, width, height, samples);
        return bytes(image, "png", 1, false);
    }

    /** The same JPEG with an APP1 segment of EXIF that holds the orientation alone (TIFF 6.0, tag 0x0112, SHORT). */
    static byte[] oriented(byte[] jpeg, int tag) {
        ByteBuffer exif = ByteBuffer.allocate(6 + 8 + 2 + 12 + 4);
        exif.put("Exif\0\0".getBytes(StandardCharsets.ISO_8859_1));
        exif.put("MM".getBytes(StandardCharsets.ISO_8859_1))
                .putShort((short) 42)
                .putInt(8);
        exif.putShort((short) 1);
        exif.putShort((short) 0x0112)
                .putShort((short) 3)
                .putInt(1)
                .putShort((short) tag)
                .putShort((short) 0);
        exif.putInt(0);
        return withSegment(jpeg, 0xe1, exif.array());
    }

    /** The same JPEG with a color profile (ICC.1, annex B.4: one APP2 segment). */
    static byte[] profiled(byte[] jpeg, byte[] profile) {
        ByteBuffer segment = ByteBuffer.allocate(14 + profile.length);
        segment.put("ICC_PROFILE\0".getBytes(StandardCharsets.ISO_8859_1));
        segment.put((byte) 1).put((byte) 1).put(profile);
        return withSegment(jpeg, 0xe2, segment.array());
    }

    static byte[] withSegment(byte[] jpeg, int marker, byte[] content) {
        ByteBuffer whole = ByteBuffer.allocate(jpeg.length + 4 + content.length);
        whole.put(jpeg, 0, 2);
        whole.put((byte) 0xff).put((byte) marker).putShort((short) (content.length + 2));
        whole.put(content).put(jpeg, 2, jpeg.length - 2);
        return whole.array();
    }

    static byte[] resource(String name) throws IOException {
        try (InputStream in = Objects.requireNonNull(Photographs.class.getResourceAsStream(name), name)) {
            return in.readAllBytes();
        }
    }
}
