package umbercard.photo;

import java.util.Arrays;
import java.util.List;

/**
 * Planes blurred by the Gaussian itself, cut off at four sigma and mirrored at the borders; quick for a sigma of a few
 * samples. Arithmetic is in floats, whose rounding Java lays down, in an order that a processor can do several samples at
 * once in.
 */
final class BlurredRows implements Rows {
    private final List<Plane> planes;
    private final float[] weights;

    /** @param sigma in samples, over 0 */
    BlurredRows(List<Plane> planes, double sigma) {
        this.planes = planes;
        this.weights = weights(sigma);
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

    @Override
    public int width() {
        return planes.get(0).width();
    }

    @Override
    public int height() {
        return planes.get(0).height();
    }

    @Override
    public int planes() {
        return planes.size();
    }

    @Override
    public Maker maker() {
        int reach = weights.length - 1;
        float[] padded = new float[width() + 2 * reach];
        return (y, into) -> {
            for (int c = 0; c < planes.size(); c++) {
                down(planes.get(c).samples(), y, padded);
                for (int i = 1; i <= reach; i++) {
                    padded[reach - i] = padded[reach + Squinter.mirrored(-i, width())];
                    padded[reach + width() - 1 + i] = padded[reach + Squinter.mirrored(width() - 1 + i, width())];
                }
                across(padded, into[c]);
            }
        };
    }

    private void down(float[] samples, int y, float[] padded) {
        int reach = weights.length - 1;
        int width = width();
        for (int k = 0; k <= reach; k++) {
            int upper = Squinter.mirrored(y - k, height()) * width;
            int lower = Squinter.mirrored(y + k, height()) * width;
            if (k == 0) {
                put(weights[k], samples, upper, lower, padded, reach, width);
            } else {
                add(weights[k], samples, upper, lower, padded, reach, width);
            }
        }
    }

    private void across(float[] padded, float[] into) {
        int reach = weights.length - 1;
        put(weights[0], padded, reach, reach, into, 0, width());
        for (int k = 1; k <= reach; k++) {
            add(weights[k], padded, reach - k, reach + k, into, 0, width());
        }
    }

    private static void put(float weight, float[] from, int one, int other, float[] into, int at, int count) {
        for (int i = 0; i < count; i++) {
            into[at + i] = weight * (from[one + i] + from[other + i]);
        }
    }

    private static void add(float weight, float[] from, int one, int other, float[] into, int at, int count) {
        for (int i = 0; i < count; i++) {
            into[at + i] += weight * (from[one + i] + from[other + i]);
        }
    }
}
