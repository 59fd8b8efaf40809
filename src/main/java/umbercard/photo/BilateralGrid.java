package umbercard.photo;

import java.util.Arrays;
import java.util.List;

/**
 * A bilateral filter on a coarse grid over place and L*: S. Paris, F. Durand, "A Fast Approximation of the Bilateral Filter
 * Using a Signal Processing Approach", ECCV 2006. Samples are spread over the cells next to them, the cells are blurred,
 * and each sample of a picture of any size gathers what its own place and L* come to. A mean with weights over 0, so nothing
 * gets darker or lighter than what was there.
 */
final class BilateralGrid {
    /**
     * The variance, in cells, of spreading and gathering straight between cells (1/6 each) and of the blur 1-2-1 (1/2).
     */
    static final double VARIANCE = 5.0 / 6;

    /** How far apart cells are in L*: about the step between two values, over which an edge counts as one. */
    private static final double LIGHTNESS_STEP = 8;

    private static final int LEVELS = (int) (100 / LIGHTNESS_STEP) + 4;

    /**
     * How much of what a cell holds runs on into the next lighter and darker. A place may be gathered for whose L* nothing
     * was spread; it then gets what the nearest L* there came to.
     */
    private static final float RUN_ON = 0.004f;

    private final double cell;
    private final int channels;
    /** From one L* to the next. */
    private final int layer;
    /** From one row of cells to the next. */
    private final int line;

    private final float[] cells;

    /**
     * Spreads planes.
     *
     * @param guide the {@link #depth} of each sample, of the planes' size
     * @param planes to be smoothed
     * @param cell the size of a cell, in samples
     */
    BilateralGrid(Plane guide, List<Plane> planes, double cell) {
        this.cell = cell;
        channels = planes.size() + 1;
        layer = ((int) (guide.width() / cell) + 4) * channels;
        line = layer * LEVELS;
        int down = (int) (guide.height() / cell) + 4;
        cells = new float[line * down];
        float[][] samples = planes.stream().map(Plane::samples).toArray(float[][]::new);
        Columns columns = new Columns(guide.width(), cell);
        Bands.each(down, (from, to) -> {
            float[] spread = new float[line];
            float[] blurred = new float[line];
            for (int row = from; row < to; row++) {
                Arrays.fill(spread, 0);
                spread(row, guide, samples, columns, spread);
                blur(spread, blurred, channels);
                blur(blurred, spread, layer);
                runOn(spread);
                System.arraycopy(spread, 0, cells, row * line, line);
            }
        });
    }

    /** Where on the third axis of a grid a luminance lies. */
    static float depth(float luminance) {
        return (float) (Lightness.of(luminance) / LIGHTNESS_STEP + 1);
    }

    private final class Columns {
        final int[] left;
        final float[] part;

        Columns(int width, double size) {
            left = new int[width];
            part = new float[width];
            for (int x = 0; x < width; x++) {
                double place = (x + 0.5) / size + 1;
                left[x] = channels * (int) place;
                part[x] = (float) (place - (int) place);
            }
        }
    }

    /** Spreads the samples above and below one row of cells. */
    private void spread(int row, Plane guide, float[][] samples, Columns columns, float[] into) {
        int first = Math.max(0, (int) Math.floor((row - 2) * cell - 0.5));
        int last = Math.min(guide.height() - 1, (int) Math.ceil(row * cell - 0.5));
        for (int y = first; y <= last; y++) {
            float part = (float) (1 - Math.abs((y + 0.5) / cell + 1 - row));
            if (part > 0) {
                int at = y * guide.width();
                if (channels == 2) {
                    spreadOne(part, at, guide, samples[0], columns, into);
                } else {
                    spreadAll(part, at, guide, samples, columns, into);
                }
            }
        }
    }

    private void spreadOne(float down, int at, Plane guide, float[] samples, Columns columns, float[] into) {
        float[] depth = guide.samples();
        for (int x = 0; x < guide.width(); x++) {
            int darker = (int) depth[at + x];
            float light = depth[at + x] - darker;
            float right = columns.part[x] * down;
            float left = down - right;
            float sample = samples[at + x];
            int to = columns.left[x] + darker * layer;
            put(into, to, left * (1 - light), sample);
            put(into, to + 2, right * (1 - light), sample);
            put(into, to + layer, left * light, sample);
            put(into, to + layer + 2, right * light, sample);
        }
    }

    private static void put(float[] into, int to, float part, float sample) {
        into[to] += part;
        into[to + 1] += part * sample;
    }

    private void spreadAll(float down, int at, Plane guide, float[][] samples, Columns columns, float[] into) {
        float[] depth = guide.samples();
        for (int x = 0; x < guide.width(); x++) {
            int darker = (int) depth[at + x];
            float light = depth[at + x] - darker;
            float right = columns.part[x] * down;
            float left = down - right;
            int to = columns.left[x] + darker * layer;
            for (int c = 0; c < channels; c++) {
                float sample = c == 0 ? 1 : samples[c - 1][at + x];
                into[to + c] += left * (1 - light) * sample;
                into[to + channels + c] += right * (1 - light) * sample;
                into[to + layer + c] += left * light * sample;
                into[to + layer + channels + c] += right * light * sample;
            }
        }
    }

    /** Blurred 1-2-1 along one axis; the outermost cells are empty, so that nothing runs over into the next line. */
    private static void blur(float[] from, float[] into, int step) {
        int end = from.length - step;
        for (int i = step; i < end; i++) {
            into[i] = 0.25f * (from[i - step] + from[i + step]) + 0.5f * from[i];
        }
        for (int i = 0; i < step; i++) {
            into[i] = 0.25f * from[i + step] + 0.5f * from[i];
            into[end + i] = 0.25f * from[end + i - step] + 0.5f * from[end + i];
        }
    }

    private void runOn(float[] row) {
        for (int z = 1; z < LEVELS; z++) {
            add(row, (z - 1) * layer, z * layer);
        }
        for (int z = LEVELS - 2; z >= 0; z--) {
            add(row, (z + 1) * layer, z * layer);
        }
    }

    private void add(float[] row, int from, int to) {
        for (int i = 0; i < layer; i++) {
            row[to + i] += RUN_ON * row[from + i];
        }
    }

    /**
     * Gathers for pictures of one width.
     *
     * @param width in samples
     * @param samplesInCell the size of a cell in such samples
     */
    Gathering gathering(int width, double samplesInCell) {
        return new Gathering(new Columns(width, samplesInCell), samplesInCell);
    }

    /** Gathers row by row; for one thread, others need their own from {@link #another}. */
    final class Gathering {
        private final Columns columns;
        private final double size;
        private final float[] near = new float[line];

        private Gathering(Columns columns, double size) {
            this.columns = columns;
            this.size = size;
        }

        Gathering another() {
            return new Gathering(columns, size);
        }

        /** Row {@code y} of the planes smoothed, for samples of the depths given. */
        void gather(int y, float[] depth, float[][] into) {
            approach((y + 0.5) / size + 1);
            if (channels == 2) {
                gatherOne(depth, into[0]);
            } else {
                gatherAll(depth, into);
            }
        }

        /** The cells at a place down, between the rows of cells, blurred 1-2-1 down. */
        private void approach(double down) {
            int upper = (int) down;
            float part = (float) (down - upper);
            int at = (upper - 1) * line;
            float a = 0.25f * (1 - part);
            float b = 0.25f * (2 - part);
            float c = 0.25f * (1 + part);
            float d = 0.25f * part;
            for (int i = 0; i < line; i++) {
                near[i] = a * cells[at + i]
                        + b * cells[at + line + i]
                        + c * cells[at + 2 * line + i]
                        + d * cells[at + 3 * line + i];
            }
        }

        private void gatherOne(float[] depth, float[] into) {
            for (int x = 0; x < into.length; x++) {
                int darker = (int) depth[x];
                float light = depth[x] - darker;
                float right = columns.part[x];
                int at = columns.left[x] + darker * layer;
                int next = at + layer;
                float weight = (1 - light) * (near[at] + right * (near[at + 2] - near[at]))
                        + light * (near[next] + right * (near[next + 2] - near[next]));
                float sum = (1 - light) * (near[at + 1] + right * (near[at + 3] - near[at + 1]))
                        + light * (near[next + 1] + right * (near[next + 3] - near[next + 1]));
                into[x] = sum / weight;
            }
        }

        private void gatherAll(float[] depth, float[][] into) {
            for (int x = 0; x < depth.length; x++) {
                int darker = (int) depth[x];
                float light = depth[x] - darker;
                float right = columns.part[x];
                float d = (1 - light) * right;
                float c = 1 - light - d;
                float b = light * right;
                float a = light - b;
                int at = columns.left[x] + darker * layer;
                int next = at + layer;
                float weight = c * near[at] + d * near[at + channels] + a * near[next] + b * near[next + channels];
                float part = 1 / weight;
                for (int k = 1; k < channels; k++) {
                    into[k - 1][x] = part
                            * (c * near[at + k]
                                    + d * near[at + channels + k]
                                    + a * near[next + k]
                                    + b * near[next + channels + k]);
                }
            }
        }
    }
}
