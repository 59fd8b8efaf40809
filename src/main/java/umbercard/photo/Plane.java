package umbercard.photo;

import java.util.Arrays;

/**
 * One plane of samples in linear light, row after row, mirrored at its borders. Arithmetic is in floats, whose rounding Java
 * lays down, in an order that a processor can do several samples at once in.
 */
final class Plane {
    private final int width;
    private final int height;
    private final float[] samples;

    Plane(int width, int height, float[] samples) {
        this.width = width;
        this.height = height;
        this.samples = samples;
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    /** The array itself, not a copy. */
    float[] samples() {
        return samples;
    }

    /** Half as wide and high, rounded up: each sample the mean of four. */
    Plane half() {
        int across = (width + 1) / 2;
        int down = (height + 1) / 2;
        float[] half = new float[across * down];
        for (int y = 0; y < down; y++) {
            int upper = 2 * y * width;
            int lower = Math.min(2 * y + 1, height - 1) * width;
            for (int x = 0; x < across; x++) {
                int left = 2 * x;
                int right = Math.min(left + 1, width - 1);
                half[y * across + x] = 0.25f
                        * (samples[upper + left]
                                + samples[upper + right]
                                + samples[lower + left]
                                + samples[lower + right]);
            }
        }
        return new Plane(across, down, half);
    }

    /**
     * {@code factor} times as wide and high, straight between the middles of the samples.
     *
     * @param toWidth the new width, at most {@code factor} times this one's
     * @param toHeight likewise
     */
    Plane enlarged(int toWidth, int toHeight, int factor) {
        if (factor == 1) {
            return this;
        }
        Plane wide = widened(toWidth, factor);
        float[] large = new float[toWidth * toHeight];
        for (int y = 0; y < toHeight; y++) {
            double place = (y + 0.5) / factor - 0.5;
            int upper = Math.max(0, (int) Math.floor(place));
            int lower = Math.min(height - 1, (int) Math.floor(place) + 1);
            float part = (float) (place - Math.floor(place));
            blend(wide.samples, upper * toWidth, lower * toWidth, part, large, y * toWidth, toWidth);
        }
        return new Plane(toWidth, toHeight, large);
    }

    private static void blend(float[] from, int upper, int lower, float part, float[] into, int at, int count) {
        for (int i = 0; i < count; i++) {
            into[at + i] = from[upper + i] + part * (from[lower + i] - from[upper + i]);
        }
    }

    private Plane widened(int toWidth, int factor) {
        float[] wide = new float[toWidth * height];
        for (int x = 0; x < toWidth; x++) {
            double place = (x + 0.5) / factor - 0.5;
            int left = Math.max(0, (int) Math.floor(place));
            int right = Math.min(width - 1, (int) Math.floor(place) + 1);
            float part = (float) (place - Math.floor(place));
            for (int y = 0; y < height; y++) {
                float start = samples[y * width + left];
                wide[y * toWidth + x] = start + part * (samples[y * width + right] - start);
            }
        }
        return new Plane(toWidth, height, wide);
    }

    /** Blurred by the Gaussian itself, cut off at four sigma; quick for a sigma of a few samples. */
    Plane blurred(double sigma) {
        float[] weights = weights(sigma);
        int reach = weights.length - 1;
        float[] across = new float[samples.length];
        float[] padded = new float[width + 2 * reach];
        for (int y = 0; y < height; y++) {
            System.arraycopy(samples, y * width, padded, reach, width);
            for (int i = 1; i <= reach; i++) {
                padded[reach - i] = samples[y * width + Squinter.mirrored(-i, width)];
                padded[reach + width - 1 + i] = samples[y * width + Squinter.mirrored(width - 1 + i, width)];
            }
            for (int k = 0; k <= reach; k++) {
                add(weights[k], padded, reach - k, reach + k, across, y * width, width);
            }
        }
        float[] down = new float[samples.length];
        for (int y = 0; y < height; y++) {
            for (int k = 0; k <= reach; k++) {
                int upper = Squinter.mirrored(y - k, height) * width;
                int lower = Squinter.mirrored(y + k, height) * width;
                add(weights[k], across, upper, lower, down, y * width, width);
            }
        }
        return new Plane(width, height, down);
    }

    /** Half the weights, the middle one first and halved, since it is added twice. */
    private static float[] weights(double sigma) {
        int reach = Math.max(1, (int) Math.ceil(4 * sigma));
        double[] exact = new double[reach + 1];
        for (int i = 0; i <= reach; i++) {
            exact[i] = StrictMath.exp(-i * i / (2 * sigma * sigma)) / (i == 0 ? 2 : 1);
        }
        double sum = 2 * Arrays.stream(exact).sum();
        float[] weights = new float[reach + 1];
        for (int i = 0; i <= reach; i++) {
            weights[i] = (float) (exact[i] / sum);
        }
        return weights;
    }

    private static void add(float weight, float[] from, int one, int other, float[] into, int at, int count) {
        for (int i = 0; i < count; i++) {
            into[at + i] += weight * (from[one + i] + from[other + i]);
        }
    }
}
