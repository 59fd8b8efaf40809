package umbercard.photo;

import java.util.Arrays;
import umbercard.picture.Picture;

/**
 * Reduces a picture by exact area averaging in linear light: a pixel of the result is the mean of all that it covers,
 * parts of pixels counting by their part. Takes the rows one by one, from the top, and keeps only the row in hand.
 */
final class AreaAverage {
    private final int width;
    private final int height;
    private final double across;
    private final double down;
    /** Of each pixel of the result, the first and the last pixel of the source that it covers, and which part of them. */
    private final int[] first;

    private final int[] last;
    private final float[] firstPart;
    private final float[] lastPart;
    private final float[] narrow;
    private final double[] sum;
    private final int[] pixels;
    private double from;
    private int row;

    /** From a picture's size to one that is as small or smaller both ways. */
    AreaAverage(int sourceWidth, int sourceHeight, int width, int height) {
        this.width = width;
        this.height = height;
        across = (double) sourceWidth / width;
        down = (double) sourceHeight / height;
        first = new int[width];
        last = new int[width];
        firstPart = new float[width];
        lastPart = new float[width];
        for (int x = 0; x < width; x++) {
            double left = x * across;
            double right = Math.min(sourceWidth, left + across);
            first[x] = (int) left;
            last[x] = Math.max(first[x], Math.min(sourceWidth - 1, (int) Math.ceil(right) - 1));
            firstPart[x] = (float) (Math.min(first[x] + 1, right) - left);
            lastPart[x] = last[x] == first[x] ? 0 : (float) (right - last[x]);
        }
        narrow = new float[3 * width];
        sum = new double[3 * width];
        pixels = new int[width * height];
    }

    /** The next row: red, green, blue in linear light, pixel after pixel. */
    void take(float[] linear) {
        for (int x = 0, to = 0; x < width; x++, to += 3) {
            int at = 3 * first[x];
            int end = 3 * last[x];
            float part = firstPart[x];
            float red = part * linear[at];
            float green = part * linear[at + 1];
            float blue = part * linear[at + 2];
            for (at += 3; at < end; at += 3) {
                red += linear[at];
                green += linear[at + 1];
                blue += linear[at + 2];
            }
            part = lastPart[x];
            narrow[to] = red + part * linear[end];
            narrow[to + 1] = green + part * linear[end + 1];
            narrow[to + 2] = blue + part * linear[end + 2];
        }
        taken();
    }

    /** The next row: red, green, blue of sRGB in 8 bits, pixel after pixel. The same as by way of linear light, but quicker. */
    void take(byte[] encoded) {
        float[] light = LinearLight.OF_BYTE;
        for (int x = 0, to = 0; x < width; x++, to += 3) {
            int at = 3 * first[x];
            int end = 3 * last[x];
            float part = firstPart[x];
            float red = part * light[encoded[at] & 0xff];
            float green = part * light[encoded[at + 1] & 0xff];
            float blue = part * light[encoded[at + 2] & 0xff];
            for (at += 3; at < end; at += 3) {
                red += light[encoded[at] & 0xff];
                green += light[encoded[at + 1] & 0xff];
                blue += light[encoded[at + 2] & 0xff];
            }
            part = lastPart[x];
            narrow[to] = red + part * light[encoded[end] & 0xff];
            narrow[to + 1] = green + part * light[encoded[end + 1] & 0xff];
            narrow[to + 2] = blue + part * light[encoded[end + 2] & 0xff];
        }
        taken();
    }

    /** The result, once every row was taken. */
    Picture picture() {
        return new Picture(width, height, pixels);
    }

    private void taken() {
        double top = from;
        double bottom = from + 1;
        while (row < height && bottom >= (row + 1) * down - 1e-9) {
            double end = (row + 1) * down;
            add(Math.max(0, end - top));
            flush();
            top = end;
        }
        if (row < height) {
            add(Math.max(0, bottom - top));
        }
        from = bottom;
    }

    private void add(double part) {
        if (part == 0) {
            return;
        }
        for (int i = 0; i < sum.length; i++) {
            sum[i] += part * narrow[i];
        }
    }

    private void flush() {
        double area = across * down;
        for (int x = 0; x < width; x++) {
            pixels[row * width + x] = LinearLight.rgbOf(
                    (float) (sum[3 * x] / area), (float) (sum[3 * x + 1] / area), (float) (sum[3 * x + 2] / area));
        }
        Arrays.fill(sum, 0);
        row++;
    }
}
