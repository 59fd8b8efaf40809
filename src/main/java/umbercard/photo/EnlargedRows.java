package umbercard.photo;

import java.util.List;

/** Planes some times as wide and high, straight between the middles of their samples. */
final class EnlargedRows implements Rows {
    private final List<Plane> small;
    private final int width;
    private final int height;
    private final int factor;
    private final int[] left;
    private final int[] right;
    private final float[] part;

    /**
     * @param width the new width, at most {@code factor} times that of the planes
     * @param height likewise
     */
    EnlargedRows(List<Plane> small, int width, int height, int factor) {
        this.small = small;
        this.width = width;
        this.height = height;
        this.factor = factor;
        left = new int[width];
        right = new int[width];
        part = new float[width];
        for (int x = 0; x < width; x++) {
            double place = place(x);
            left[x] = Math.max(0, (int) Math.floor(place));
            right[x] = Math.min(small.get(0).width() - 1, (int) Math.floor(place) + 1);
            part[x] = (float) (place - Math.floor(place));
        }
    }

    private double place(int at) {
        return (at + 0.5) / factor - 0.5;
    }

    @Override
    public int width() {
        return width;
    }

    @Override
    public int height() {
        return height;
    }

    @Override
    public int planes() {
        return small.size();
    }

    @Override
    public Maker maker() {
        Wide upper = new Wide();
        Wide lower = new Wide();
        return (y, into) -> {
            double place = place(y);
            int above = Math.max(0, (int) Math.floor(place));
            int below = Math.min(small.get(0).height() - 1, (int) Math.floor(place) + 1);
            if (lower.row == above) {
                upper.swap(lower);
            }
            upper.make(above);
            lower.make(below);
            float down = (float) (place - Math.floor(place));
            for (int c = 0; c < into.length; c++) {
                blend(upper.samples[c], lower.samples[c], down, into[c], width);
            }
        };
    }

    private static void blend(float[] one, float[] other, float part, float[] into, int count) {
        for (int i = 0; i < count; i++) {
            into[i] = one[i] + part * (other[i] - one[i]);
        }
    }

    /** One row of all planes, enlarged sideways. */
    private final class Wide {
        private float[][] samples = new float[small.size()][width];
        private int row = -1;

        void make(int wanted) {
            if (row == wanted) {
                return;
            }
            row = wanted;
            for (int c = 0; c < samples.length; c++) {
                widen(small.get(c).samples(), wanted * small.get(c).width(), samples[c]);
            }
        }

        private void widen(float[] from, int start, float[] into) {
            for (int x = 0; x < width; x++) {
                float first = from[start + left[x]];
                into[x] = first + part[x] * (from[start + right[x]] - first);
            }
        }

        void swap(Wide other) {
            float[][] samplesBefore = samples;
            int rowBefore = row;
            samples = other.samples;
            row = other.row;
            other.samples = samplesBefore;
            other.row = rowBefore;
        }
    }
}
