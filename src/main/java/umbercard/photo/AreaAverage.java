package umbercard.photo;

import java.util.Arrays;
import umbercard.picture.Picture;

/**
 * Reduces a picture by exact area averaging in linear light: a pixel of the result is the mean of all that it covers,
 * parts of pixels counting by their part. Takes the rows one by one, from the top, and keeps only the row in hand.
 */
final class AreaAverage {
    private final int sourceWidth;
    private final int width;
    private final int height;
    private final double across;
    private final double down;
    private final float[] narrow;
    private final double[] sum;
    private final int[] pixels;
    private double from;
    private int row;

    /** From a picture's size to one that is as small or smaller both ways. */
    AreaAverage(int sourceWidth, int sourceHeight, int width, int height) {
        this.sourceWidth = sourceWidth;
        this.width = width;
        this.height = height;
        across = (double) sourceWidth / width;
        down = (double) sourceHeight / height;
        narrow = new float[3 * width];
        sum = new double[3 * width];
        pixels = new int[width * height];
    }

    /** The next row: red, green, blue in linear light, pixel after pixel. */
    void take(float[] linear) {
        narrow(linear);
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

    /** The result, once every row was taken. */
    Picture picture() {
        return new Picture(width, height, pixels);
    }

    private void narrow(float[] linear) {
        for (int x = 0; x < width; x++) {
            double left = x * across;
            double right = Math.min(sourceWidth, left + across);
            double red = 0;
            double green = 0;
            double blue = 0;
            int last = Math.min(sourceWidth - 1, (int) Math.ceil(right) - 1);
            for (int i = (int) left; i <= last; i++) {
                double part = Math.min(i + 1, right) - Math.max(i, left);
                red += part * linear[3 * i];
                green += part * linear[3 * i + 1];
                blue += part * linear[3 * i + 2];
            }
            narrow[3 * x] = (float) (red / across);
            narrow[3 * x + 1] = (float) (green / across);
            narrow[3 * x + 2] = (float) (blue / across);
        }
    }

    private void add(double part) {
        for (int i = 0; i < sum.length; i++) {
            sum[i] += part * narrow[i];
        }
    }

    private void flush() {
        for (int x = 0; x < width; x++) {
            pixels[row * width + x] = LinearLight.rgbOf(
                    (float) (sum[3 * x] / down), (float) (sum[3 * x + 1] / down), (float) (sum[3 * x + 2] / down));
        }
        Arrays.fill(sum, 0);
        row++;
    }
}
