package umbercard.photo;

import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ColorConvertOp;
import java.awt.image.ColorModel;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;

/**
 * The rows of a decoded image as red, green and blue in linear light, transparency laid on white. Gray is taken to be
 * encoded as sRGB is, which the toolkit's own conversion does not; an embedded color profile is followed, a strip at a time.
 */
final class LinearRows {
    private static final int STRIP = 64;

    private final BufferedImage image;
    private final float[] linear;
    private final boolean direct;
    private BufferedImage strip;
    private int stripTop = -1;

    LinearRows(BufferedImage image) {
        this.image = image;
        linear = new float[3 * image.getWidth()];
        direct = isDirect(image);
        strip = image;
    }

    /** Row {@code y}, as red, green, blue, pixel after pixel; the array is used again for the next. */
    float[] row(int y) {
        if (direct) {
            Object samples = image.getRaster().getDataElements(0, y, image.getWidth(), 1, null);
            if (samples instanceof byte[] bytes) {
                ofBytes(bytes);
                return linear;
            }
            if (samples instanceof short[] shorts) {
                ofShorts(shorts);
                return linear;
            }
        }
        ofPacked(packed(y));
        return linear;
    }

    private static boolean isDirect(BufferedImage image) {
        ColorModel model = image.getColorModel();
        boolean whole = model instanceof ComponentColorModel
                && (model.getTransferType() == DataBuffer.TYPE_BYTE
                        || model.getTransferType() == DataBuffer.TYPE_USHORT);
        return whole && (isGray(model) || model.getColorSpace().isCS_sRGB());
    }

    private static boolean isGray(ColorModel model) {
        return model.getColorSpace().getType() == ColorSpace.TYPE_GRAY;
    }

    private int bands() {
        return image.getRaster().getNumBands();
    }

    private void ofBytes(byte[] samples) {
        int bands = bands();
        boolean gray = bands < 3;
        boolean alpha = bands == 2 || bands == 4;
        for (int i = 0, at = 0; at < samples.length; at += bands, i += 3) {
            linear[i] = LinearLight.OF_BYTE[samples[at] & 0xff];
            linear[i + 1] = gray ? linear[i] : LinearLight.OF_BYTE[samples[at + 1] & 0xff];
            linear[i + 2] = gray ? linear[i] : LinearLight.OF_BYTE[samples[at + 2] & 0xff];
            if (alpha) {
                onWhite(i, (samples[at + bands - 1] & 0xff) / 255f);
            }
        }
    }

    private void ofShorts(short[] samples) {
        float[] table = LinearLight.ofShort();
        int bands = bands();
        boolean gray = bands < 3;
        boolean alpha = bands == 2 || bands == 4;
        for (int i = 0, at = 0; at < samples.length; at += bands, i += 3) {
            linear[i] = table[samples[at] & 0xffff];
            linear[i + 1] = gray ? linear[i] : table[samples[at + 1] & 0xffff];
            linear[i + 2] = gray ? linear[i] : table[samples[at + 2] & 0xffff];
            if (alpha) {
                onWhite(i, (samples[at + bands - 1] & 0xffff) / 65535f);
            }
        }
    }

    private void ofPacked(int[] argb) {
        for (int i = 0, at = 0; at < argb.length; at++, i += 3) {
            linear[i] = LinearLight.OF_BYTE[argb[at] >> 16 & 0xff];
            linear[i + 1] = LinearLight.OF_BYTE[argb[at] >> 8 & 0xff];
            linear[i + 2] = LinearLight.OF_BYTE[argb[at] & 0xff];
            onWhite(i, (argb[at] >>> 24) / 255f);
        }
    }

    private void onWhite(int at, float alpha) {
        for (int i = at; i < at + 3; i++) {
            linear[i] = alpha * linear[i] + 1 - alpha;
        }
    }

    private int[] packed(int y) {
        ColorModel model = image.getColorModel();
        if (!(model instanceof ComponentColorModel)) {
            return image.getRGB(0, y, image.getWidth(), 1, null, 0, image.getWidth());
        }
        int top = y - y % STRIP;
        if (top != stripTop) {
            int height = Math.min(STRIP, image.getHeight() - top);
            BufferedImage part = image.getSubimage(0, top, image.getWidth(), height);
            strip = new BufferedImage(image.getWidth(), height, BufferedImage.TYPE_INT_ARGB);
            new ColorConvertOp(null).filter(part, strip);
            stripTop = top;
        }
        return strip.getRGB(0, y - top, image.getWidth(), 1, null, 0, image.getWidth());
    }
}
