package umbercard.photo;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A bilateral filter on a coarse grid over place and L*: S. Paris, F. Durand, "A Fast Approximation of the Bilateral Filter
 * Using a Signal Processing Approach", ECCV 2006. Samples are spread over the cells next to them, the cells are blurred,
 * and each sample gathers what its own place and L* come to. A mean with weights over 0, so nothing gets darker or lighter
 * than what was there.
 */
final class BilateralGrid {
    /** How far apart cells are in L*: about the step between two values, over which an edge counts as one. */
    private static final double LIGHTNESS_STEP = 8;

    /**
     * The variance, in cells, of spreading and gathering straight between cells (1/6 each) and of the blur 1-2-1 (1/2).
     */
    private static final double VARIANCE = 5.0 / 6;

    /** No cell is smaller, in samples: many small ones would take long, and hardly be seen. */
    private static final double LEAST_CELL = 1.6;

    private static final int LEVELS = (int) (100 / LIGHTNESS_STEP) + 4;

    private final float[] lightness;
    private final int width;
    private final int height;
    private final double cell;
    private final int across;
    private final int down;
    private final int channels;
    private final float[] cells;
    private final int[] corner = new int[8];
    private final float[] part = new float[8];

    /**
     * @param guide luminance, from whose L* the weights come
     * @param sigma of the weights by distance, in samples
     * @param planes to be smoothed, of the guide's size
     */
    BilateralGrid(Plane guide, double sigma, List<Plane> planes) {
        lightness = Lightness.of(guide.samples());
        width = guide.width();
        height = guide.height();
        cell = Math.max(LEAST_CELL, sigma / Math.sqrt(VARIANCE));
        across = (int) (width / cell) + 4;
        down = (int) (height / cell) + 4;
        channels = planes.size() + 1;
        float[] spread = spread(planes);
        cells = blurred(blurred(blurred(spread, channels), LEVELS * channels), across * LEVELS * channels);
    }

    /** Finds the eight cells round a sample and the part of it that each has. */
    private void locate(int x, int y, int at) {
        double gx = (x + 0.5) / cell + 1;
        double gy = (y + 0.5) / cell + 1;
        double gz = lightness[at] / LIGHTNESS_STEP + 1;
        int left = (int) gx;
        int upper = (int) gy;
        int darker = (int) gz;
        float px = (float) (gx - left);
        float py = (float) (gy - upper);
        float pz = (float) (gz - darker);
        int first = ((upper * across + left) * LEVELS + darker) * channels;
        for (int k = 0; k < 8; k++) {
            int right = k & 1;
            int lower = k >> 1 & 1;
            int lighter = k >> 2;
            corner[k] = first + ((lower * across + right) * LEVELS + lighter) * channels;
            part[k] = (right == 1 ? px : 1 - px) * (lower == 1 ? py : 1 - py) * (lighter == 1 ? pz : 1 - pz);
        }
    }

    private float[] spread(List<Plane> planes) {
        float[] spread = new float[across * down * LEVELS * channels];
        for (int at = 0; at < lightness.length; at++) {
            locate(at % width, at / width, at);
            for (int k = 0; k < 8; k++) {
                spread[corner[k]] += part[k];
                for (int c = 1; c < channels; c++) {
                    spread[corner[k] + c] += part[k] * planes.get(c - 1).samples()[at];
                }
            }
        }
        return spread;
    }

    /** Blurred 1-2-1 along one axis; the outermost cells are empty, so that nothing runs over into the next line. */
    private static float[] blurred(float[] from, int step) {
        float[] blurred = new float[from.length];
        for (int i = step; i < from.length - step; i++) {
            blurred[i] = 0.25f * (from[i - step] + from[i + step]) + 0.5f * from[i];
        }
        return blurred;
    }

    /** The planes smoothed, in the order they were given. */
    List<Plane> planes() {
        float[][] smooth = new float[channels - 1][width * height];
        float[] sum = new float[channels];
        for (int at = 0; at < lightness.length; at++) {
            locate(at % width, at / width, at);
            Arrays.fill(sum, 0);
            for (int k = 0; k < 8; k++) {
                for (int c = 0; c < channels; c++) {
                    sum[c] += part[k] * cells[corner[k] + c];
                }
            }
            for (int c = 1; c < channels; c++) {
                smooth[c - 1][at] = sum[c] / sum[0];
            }
        }
        List<Plane> planes = new ArrayList<>();
        for (float[] samples : smooth) {
            planes.add(new Plane(width, height, samples));
        }
        return planes;
    }
}
