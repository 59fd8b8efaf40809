package umbercard.photo;

/** A blur of one line of samples. */
sealed interface LineBlur {
    /** How many samples beyond each end are needed. */
    int reach();

    /**
     * Blurs {@code padded}, which holds {@code width} samples between two margins of {@link #reach()}, into {@code into}
     * from {@code at} on. Both lines of doubles are overwritten.
     */
    void blur(double[] padded, double[] spare, int width, float[] into, int at);

    /** The Gaussian itself, cut off at four sigma and made to add up to 1. */
    final class Kernel implements LineBlur {
        private final double[] weights;

        Kernel(double sigma) {
            int reach = Math.max(1, (int) Math.ceil(4 * sigma));
            weights = new double[reach + 1];
            double sum = 0;
            for (int i = 0; i <= reach; i++) {
                weights[i] = StrictMath.exp(-i * i / (2 * sigma * sigma));
                sum += i == 0 ? weights[i] : 2 * weights[i];
            }
            for (int i = 0; i <= reach; i++) {
                weights[i] /= sum;
            }
        }

        @Override
        public int reach() {
            return weights.length - 1;
        }

        @Override
        public void blur(double[] padded, double[] spare, int width, float[] into, int at) {
            int reach = reach();
            for (int i = 0; i < width; i++) {
                double sum = weights[0] * padded[reach + i];
                for (int k = 1; k <= reach; k++) {
                    sum += weights[k] * (padded[reach + i - k] + padded[reach + i + k]);
                }
                into[at + i] = (float) sum;
            }
        }
    }

    /** Four boxes, each of whole samples and a part of one more at both ends, that together have the Gaussian's variance. */
    final class Boxes implements LineBlur {
        private static final int PASSES = 4;

        private final int radius;
        private final double inner;
        private final double outer;

        Boxes(double sigma) {
            double variance = sigma * sigma / PASSES;
            radius = (int) Math.floor((Math.sqrt(1 + 12 * variance) - 1) / 2);
            int r = radius;
            // Gwosdek et al. 2011: alpha, the weight of the two end samples, follows from the variance wanted.
            double alpha = (2 * r + 1) * (r * (r + 1) - 3 * variance) / (6 * (variance - (r + 1) * (r + 1)));
            inner = 1 / (2 * alpha + 2 * r + 1);
            outer = alpha * inner;
        }

        @Override
        public int reach() {
            return PASSES * (radius + 1);
        }

        @Override
        public void blur(double[] padded, double[] spare, int width, float[] into, int at) {
            double[] from = padded;
            double[] to = spare;
            for (int pass = 1; pass <= PASSES; pass++) {
                int margin = pass * (radius + 1);
                box(from, to, margin, width + 2 * (reach() - margin));
                double[] last = from;
                from = to;
                to = last;
            }
            for (int i = 0; i < width; i++) {
                into[at + i] = (float) from[reach() + i];
            }
        }

        private void box(double[] from, double[] to, int start, int count) {
            double sum = 0;
            for (int i = start - radius; i <= start + radius; i++) {
                sum += from[i];
            }
            for (int i = start; i < start + count; i++) {
                to[i] = inner * sum + outer * (from[i - radius - 1] + from[i + radius + 1]);
                if (i + 1 < start + count) {
                    sum += from[i + radius + 1] - from[i - radius];
                }
            }
        }
    }
}
