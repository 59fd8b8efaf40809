package umbercard.photo;

import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ColorConvertOp;
import java.awt.image.ColorModel;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.IndexColorModel;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.util.Optional;

/**
 * The rows of a decoded picture as red, green and blue in linear light, transparency laid on white. An embedded color
 * profile is followed; where there is none, color and gray alike are taken to be encoded as sRGB is, which the toolkit's own
 * conversion does not do for gray.
 */
final class LinearRows {
    private final ColorModel model;
    private final boolean direct;
    private final Optional<Profiled> profiled;
    private final float[] linear;

    /**
     * For pictures of a color model.
     *
     * @param profile the profile embedded in the file, where the decoder does not follow it
     */
    LinearRows(ColorModel model, Optional<byte[]> profile, int width) {
        direct = isDirect(model);
        linear = new float[3 * width];
        int colors = model.getNumColorComponents();
        profiled = profile.isPresent()
                ? Profiled.of(profile.get(), colors)
                : direct ? Profiled.of(model.getColorSpace(), colors) : Optional.empty();
        this.model = profiled.isPresent() && model instanceof IndexColorModel palette
                ? profiled.get().convert(palette)
                : model;
    }

    private static boolean isDirect(ColorModel model) {
        int type = model.getColorSpace().getType();
        return model instanceof ComponentColorModel
                && !model.isAlphaPremultiplied()
                && (type == ColorSpace.TYPE_GRAY || type == ColorSpace.TYPE_RGB)
                && (model.getTransferType() == DataBuffer.TYPE_BYTE
                        || model.getTransferType() == DataBuffer.TYPE_USHORT);
    }

    /** Gives a strip's first rows to the average, one after the other. */
    void feed(Raster strip, int rows, AreaAverage average) {
        if (!direct) {
            feedPacked(strip, rows, average);
            return;
        }
        Raster colors = profiled.isPresent() ? profiled.get().convert(strip, model.getNumColorComponents()) : strip;
        Object samples = null;
        for (int y = 0; y < rows; y++) {
            samples = colors.getDataElements(0, y, strip.getWidth(), 1, samples);
            boolean plain = colors.getNumBands() == 3 && !model.hasAlpha();
            if (samples instanceof byte[] bytes && plain) {
                average.take(bytes);
                continue;
            }
            toLight(samples, colors.getNumBands());
            if (model.hasAlpha()) {
                onWhite(strip, y);
            }
            average.take(linear);
        }
    }

    private void toLight(Object samples, int bands) {
        boolean gray = bands < 3;
        int step = gray ? 0 : 1;
        if (samples instanceof byte[] bytes) {
            for (int i = 0, at = 0; i < linear.length; at += bands, i += 3) {
                linear[i] = LinearLight.OF_BYTE[bytes[at] & 0xff];
                linear[i + 1] = LinearLight.OF_BYTE[bytes[at + step] & 0xff];
                linear[i + 2] = LinearLight.OF_BYTE[bytes[at + 2 * step] & 0xff];
            }
        } else if (samples instanceof short[] shorts) {
            float[] table = LinearLight.ofShort();
            for (int i = 0, at = 0; i < linear.length; at += bands, i += 3) {
                linear[i] = table[shorts[at] & 0xffff];
                linear[i + 1] = table[shorts[at + step] & 0xffff];
                linear[i + 2] = table[shorts[at + 2 * step] & 0xffff];
            }
        }
    }

    private void onWhite(Raster strip, int y) {
        int band = strip.getNumBands() - 1;
        float most = model.getTransferType() == DataBuffer.TYPE_BYTE ? 0xff : 0xffff;
        float[] alpha = strip.getSamples(0, y, strip.getWidth(), 1, band, (float[]) null);
        for (int x = 0; x < alpha.length; x++) {
            onWhite(3 * x, alpha[x] / most);
        }
    }

    private void onWhite(int at, float alpha) {
        for (int i = at; i < at + 3; i++) {
            linear[i] = alpha * linear[i] + 1 - alpha;
        }
    }

    private void feedPacked(Raster strip, int rows, AreaAverage average) {
        BufferedImage image = packed(strip);
        int width = strip.getWidth();
        int[] argb = new int[width];
        for (int y = 0; y < rows; y++) {
            image.getRGB(0, y, width, 1, argb, 0, width);
            for (int x = 0, i = 0; x < width; x++, i += 3) {
                linear[i] = LinearLight.OF_BYTE[argb[x] >> 16 & 0xff];
                linear[i + 1] = LinearLight.OF_BYTE[argb[x] >> 8 & 0xff];
                linear[i + 2] = LinearLight.OF_BYTE[argb[x] & 0xff];
                onWhite(i, (argb[x] >>> 24) / 255f);
            }
            average.take(linear);
        }
    }

    /** The strip as an image whose pixels can be asked for as sRGB at little cost. */
    private BufferedImage packed(Raster strip) {
        WritableRaster writable =
                strip instanceof WritableRaster given ? given : strip.createCompatibleWritableRaster();
        if (!writable.equals(strip)) {
            writable.setRect(strip);
        }
        BufferedImage image = new BufferedImage(model, writable, model.isAlphaPremultiplied(), null);
        if (!(model instanceof ComponentColorModel)) {
            return image;
        }
        BufferedImage srgb = new BufferedImage(strip.getWidth(), strip.getHeight(), BufferedImage.TYPE_INT_ARGB);
        new ColorConvertOp(null).filter(image, srgb);
        return srgb;
    }
}
