package umbercard.samples;

import java.util.stream.IntStream;
import umbercard.color.Lab;
import umbercard.color.Srgb;

/**
 * A picture in linear light while it is being made. Places are in heights of the picture: u to the right, v down, 0..1.
 * Pixels are painted one by one and on their own, so the order of the threads does not matter.
 */
final class Light {
    final int width;
    final int height;
    final float[] red;
    final float[] green;
    final float[] blue;

    /** What one pixel is painted with. */
    interface Brush {
        void paint(double u, double v, int pixel);
    }

    Light(int width, int height) {
        this.width = width;
        this.height = height;
        red = new float[width * height];
        green = new float[width * height];
        blue = new float[width * height];
    }

    /** A color by L* 0..100, a* and b*, as linear light. */
    static double[] color(double lightness, double a, double b) {
        int rgb = new Lab(lightness, a, b).srgb();
        return new double[] {Srgb.linear(rgb >> 16), Srgb.linear(rgb >> 8 & 0xff), Srgb.linear(rgb & 0xff)};
    }

    static double[] mix(double[] one, double[] other, double share) {
        double[] mixed = new double[3];
        for (int i = 0; i < 3; i++) {
            mixed[i] = one[i] + share * (other[i] - one[i]);
        }
        return mixed;
    }

    static double[] times(double[] color, double factor) {
        return new double[] {color[0] * factor, color[1] * factor, color[2] * factor};
    }

    /** The height of a pixel in heights of the picture. */
    double pixel() {
        return 1.0 / height;
    }

    void everywhere(Brush brush) {
        between(0, 1, brush);
    }

    /** Paints the rows from one height to another. */
    void between(double top, double bottom, Brush brush) {
        int first = Math.max(0, (int) (top * height));
        int last = Math.min(height, (int) Math.ceil(bottom * height));
        IntStream.range(first, last).parallel().forEach(y -> {
            for (int x = 0; x < width; x++) {
                brush.paint((x + 0.5) / height, (y + 0.5) / height, y * width + x);
            }
        });
    }

    /** Lays a color over a pixel, covering it by a share. */
    void lay(int pixel, double[] color, double cover) {
        if (cover > 0) {
            float part = (float) Math.min(1, cover);
            red[pixel] += part * ((float) color[0] - red[pixel]);
            green[pixel] += part * ((float) color[1] - green[pixel]);
            blue[pixel] += part * ((float) color[2] - blue[pixel]);
        }
    }

    void dim(int pixel, double factor) {
        red[pixel] *= (float) factor;
        green[pixel] *= (float) factor;
        blue[pixel] *= (float) factor;
    }

    /** Adds the light at a place, bilinearly, times a factor, to {@code sum}. */
    void sample(double u, double v, double factor, double[] sum) {
        double x = Math.min(width - 1.001, Math.max(0, u * height - 0.5));
        double y = Math.min(height - 1.001, Math.max(0, v * height - 0.5));
        int i = (int) x;
        int j = (int) y;
        int at = j * width + i;
        int below = Math.min(height - 1, j + 1) * width + i;
        double fx = x - i;
        double fy = y - j;
        sum[0] += factor * mix(red, at, below, fx, fy);
        sum[1] += factor * mix(green, at, below, fx, fy);
        sum[2] += factor * mix(blue, at, below, fx, fy);
    }

    private static double mix(float[] plane, int at, int below, double fx, double fy) {
        double top = plane[at] + fx * (plane[at + 1] - plane[at]);
        double bottom = plane[below] + fx * (plane[below + 1] - plane[below]);
        return top + fy * (bottom - top);
    }
}
