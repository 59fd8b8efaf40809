package umbercard.photo;

import umbercard.kernel.EventThread;
import umbercard.picture.Picture;
import umbercard.picture.ValueField;

/**
 * What half-closed eyes see: a Gaussian blur in linear light. The picture is mirrored at its borders, so that no light is
 * lost there.
 *
 * <p>Under a sigma of {@value #EXACT_BELOW} pixels the kernel is the true one; from there on it is four passes of the
 * extended box filter (P. Gwosdek, S. Grewenig, A. Bruhn, J. Weickert, "Theoretical Foundations of Gaussian Convolution by
 * Extended Box Filtering", SSVM 2011), whose cost does not grow with sigma; its mean error against a true Gaussian is under
 * 0.5 L* even on stripes of black and white, and far less on a photograph. {@link SquintPyramid} is quicker where many blurs
 * of one picture are wanted.
 */
public final class Squinter {
    private static final int EXACT_BELOW = 3;

    private Squinter() {}

    /**
     * A blurred field.
     *
     * @param sigmaPixels the Gaussian's standard deviation in pixels; 0 gives the same field
     * @throws IllegalStateException on the event thread
     */
    public static ValueField squint(ValueField field, double sigmaPixels) {
        EventThread.refuse("squinting");
        if (sigmaPixels == 0) {
            return field;
        }
        return new ValueField(
                field.width(), field.height(), blur(field.luminance(), field.width(), field.height(), sigmaPixels));
    }

    /**
     * A blurred picture.
     *
     * @param sigmaPixels the Gaussian's standard deviation in pixels; 0 gives the same picture
     * @throws IllegalStateException on the event thread
     */
    public static Picture squint(Picture picture, double sigmaPixels) {
        EventThread.refuse("squinting");
        if (sigmaPixels == 0) {
            return picture;
        }
        int[] blurred = new int[picture.pixels().length];
        for (int shift = 0; shift < 24; shift += 8) {
            float[] plane = new float[blurred.length];
            for (int i = 0; i < plane.length; i++) {
                plane[i] = LinearLight.OF_BYTE[picture.pixels()[i] >> shift & 0xff];
            }
            plane = blur(plane, picture.width(), picture.height(), sigmaPixels);
            for (int i = 0; i < plane.length; i++) {
                blurred[i] |= LinearLight.byteOf(plane[i]) << shift;
            }
        }
        return new Picture(picture.width(), picture.height(), blurred);
    }

    private static float[] blur(float[] samples, int width, int height, double sigma) {
        if (!(sigma > 0) || !Double.isFinite(sigma)) {
            throw new IllegalArgumentException("a blur's sigma is 0 or more: " + sigma);
        }
        LineBlur line = sigma < EXACT_BELOW ? new LineBlur.Kernel(sigma) : new LineBlur.Boxes(sigma);
        float[] turned = pass(samples, width, height, line);
        return pass(turned, height, width, line);
    }

    /** Blurs every row and gives the result with rows and columns exchanged. */
    private static float[] pass(float[] samples, int width, int height, LineBlur blur) {
        float[] turned = new float[samples.length];
        int margin = blur.reach();
        double[] padded = new double[width + 2 * margin];
        double[] spare = new double[padded.length];
        // Several rows at a time, so that the turned writes fill whole cache lines.
        int rows = 16;
        float[] done = new float[rows * width];
        for (int top = 0; top < height; top += rows) {
            int count = Math.min(rows, height - top);
            for (int r = 0; r < count; r++) {
                pad(samples, (top + r) * width, width, margin, padded);
                blur.blur(padded, spare, width, done, r * width);
            }
            for (int x = 0; x < width; x++) {
                for (int r = 0; r < count; r++) {
                    turned[x * height + top + r] = done[r * width + x];
                }
            }
        }
        return turned;
    }

    private static void pad(float[] samples, int start, int width, int margin, double[] padded) {
        for (int i = 0; i < width; i++) {
            padded[margin + i] = samples[start + i];
        }
        for (int i = 1; i <= margin; i++) {
            padded[margin - i] = samples[start + mirrored(-i, width)];
            padded[margin + width - 1 + i] = samples[start + mirrored(width - 1 + i, width)];
        }
    }

    /** Where a line of {@code width} samples that is mirrored at its ends has the sample of a place beyond them. */
    static int mirrored(int at, int width) {
        int place = Math.floorMod(at, 2 * width);
        return place < width ? place : 2 * width - 1 - place;
    }
}
