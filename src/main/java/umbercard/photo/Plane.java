package umbercard.photo;

/** One plane of samples in linear light, row after row. */
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
        Bands.each(down, (from, to) -> {
            for (int y = from; y < to; y++) {
                halve(2 * y * width, Math.min(2 * y + 1, height - 1) * width, half, y * across, across);
            }
        });
        return new Plane(across, down, half);
    }

    private void halve(int upper, int lower, float[] into, int at, int across) {
        for (int x = 0; x < across; x++) {
            int left = 2 * x;
            int right = Math.min(left + 1, width - 1);
            into[at + x] = 0.25f
                    * (samples[upper + left] + samples[upper + right] + samples[lower + left] + samples[lower + right]);
        }
    }
}
