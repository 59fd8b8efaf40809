package umbercard.photo;

/**
 * Where to part a histogram in two. N. Otsu, "A Threshold Selection Method from Gray-Level Histograms", IEEE Trans. Systems,
 * Man, and Cybernetics 9(1), 1979: where the variance between the two classes is largest.
 */
final class Otsu {
    /**
     * The best place to part some levels.
     *
     * @param level the highest level of the lower class; the middle one where several in a row are equally good
     * @param gain the variance between the classes times the number of samples: how much less the samples vary within the
     *     two classes than they did within the one
     */
    record Parting(int level, double gain) {}

    private static final Parting NONE = new Parting(-1, 0);

    private Otsu() {}

    /** The best parting of all levels; level -1 where one level has all samples. */
    static Parting of(long[] histogram) {
        return of(histogram, 0, histogram.length);
    }

    /** The best parting of the levels from {@code from} up to but without {@code to}; level -1 where there is none. */
    static Parting of(long[] histogram, int from, int to) {
        double count = 0;
        double sum = 0;
        for (int i = from; i < to; i++) {
            count += histogram[i];
            sum += (double) i * histogram[i];
        }
        double best = 0;
        int first = -1;
        int last = -1;
        double below = 0;
        double sumBelow = 0;
        for (int k = from; k < to; k++) {
            below += histogram[k];
            sumBelow += (double) k * histogram[k];
            double above = count - below;
            if (below == 0 || above == 0) {
                continue;
            }
            double step = sumBelow / below - (sum - sumBelow) / above;
            double between = below * above * step * step;
            if (between > best) {
                best = between;
                first = k;
                last = k;
            } else if (between == best && last == k - 1) {
                last = k;
            }
        }
        return first < 0 ? NONE : new Parting((first + last) / 2, best / count);
    }
}
