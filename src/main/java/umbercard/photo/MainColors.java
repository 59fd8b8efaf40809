package umbercard.photo;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import umbercard.color.Lab;
import umbercard.picture.MainColor;
import umbercard.picture.Picture;

/**
 * The main colors of a part of a picture. Its pixels are counted in a histogram of five bits a channel; the bins' mean colors
 * are gathered into clusters in CIE L*a*b*, first by cutting the cluster that varies most where the cut takes away most of
 * that (after X. Wu, "Efficient Statistical Computations for Optimal Color Quantization", Graphics Gems II, 1991), then by S.
 * P. Lloyd's rounds ("Least Squares Quantization in PCM", IEEE Trans. Information Theory 28(2), 1982) until nothing changes.
 * Sums over pixels are whole numbers, so the same pixels in another order give the same colors, on every machine.
 */
public final class MainColors {
    private static final int BITS = 5;
    private static final int BINS = 1 << (3 * BITS);

    /** Linear light 0..1 as a whole number. */
    private static final int UNIT = 1 << 20;

    /** Lloyd's rounds always end; this bounds them where rounding makes two ways equally good in turn. */
    private static final int MOST_ROUNDS = 500;

    private static final long[] WHOLE = whole();

    /** The bins that hold pixels: where they lie in L*a*b*, and how many pixels each has. */
    private final double[][] places;

    private final double[] counts;
    private final int[] clusterOf;

    private MainColors(double[][] places, double[] counts) {
        this.places = places;
        this.counts = counts;
        this.clusterOf = new int[counts.length];
    }

    private static long[] whole() {
        long[] whole = new long[256];
        for (int i = 0; i < 256; i++) {
            whole[i] = Math.round((double) LinearLight.OF_BYTE[i] * UNIT);
        }
        return whole;
    }

    /** {@link #of(Picture, boolean[], int)} of the whole picture. */
    public static List<MainColor> of(Picture picture, int most) {
        boolean[] all = new boolean[picture.pixels().length];
        Arrays.fill(all, true);
        return of(picture, all, most);
    }

    /**
     * The main colors of some of a picture's pixels, the largest share first.
     *
     * @param inside for each pixel, row after row, whether it counts
     * @param most how many colors to find, 1 or more; fewer come where there are fewer
     */
    public static List<MainColor> of(Picture picture, boolean[] inside, int most) {
        if (most < 1 || inside.length != picture.pixels().length) {
            throw new IllegalArgumentException(most + " colors of " + inside.length + " pixels");
        }
        MainColors colors = binned(picture.pixels(), inside);
        int clusters = colors.cut(most);
        double[][] middles = colors.settle(clusters);
        return colors.told(middles);
    }

    private static MainColors binned(int[] pixels, boolean[] inside) {
        long[] sums = new long[4 * BINS];
        for (int i = 0; i < pixels.length; i++) {
            if (inside[i]) {
                int rgb = pixels[i];
                int bin = 4 * ((rgb >> 9 & 0x7c00) | (rgb >> 6 & 0x3e0) | (rgb >> 3 & 0x1f));
                sums[bin]++;
                sums[bin + 1] += WHOLE[rgb >> 16 & 0xff];
                sums[bin + 2] += WHOLE[rgb >> 8 & 0xff];
                sums[bin + 3] += WHOLE[rgb & 0xff];
            }
        }
        List<double[]> places = new ArrayList<>();
        List<Double> counts = new ArrayList<>();
        for (int bin = 0; bin < sums.length; bin += 4) {
            if (sums[bin] > 0) {
                double unit = (double) sums[bin] * UNIT;
                Lab color = Lab.ofLinear(sums[bin + 1] / unit, sums[bin + 2] / unit, sums[bin + 3] / unit);
                places.add(new double[] {color.l(), color.a(), color.b()});
                counts.add((double) sums[bin]);
            }
        }
        return new MainColors(
                places.toArray(double[][]::new),
                counts.stream().mapToDouble(Double::doubleValue).toArray());
    }

    /** Parts the bins into clusters, and gives how many came of it. */
    private int cut(int most) {
        if (counts.length == 0) {
            return 0;
        }
        List<Cut> cuts = new ArrayList<>();
        cuts.add(bestCut(0));
        while (cuts.size() < most) {
            int where = 0;
            for (int i = 1; i < cuts.size(); i++) {
                where = cuts.get(i).gain() > cuts.get(where).gain() ? i : where;
            }
            Cut best = cuts.get(where);
            if (best.gain() <= 0) {
                break;
            }
            for (int bin : best.upper()) {
                clusterOf[bin] = cuts.size();
            }
            cuts.set(where, bestCut(where));
            cuts.add(bestCut(cuts.size()));
        }
        return cuts.size();
    }

    /** A cut across one axis: how much less its two parts vary within themselves, and which bins lie above it. */
    private record Cut(double gain, List<Integer> upper) {}

    private Cut bestCut(int cluster) {
        List<Integer> bins = new ArrayList<>();
        for (int i = 0; i < clusterOf.length; i++) {
            if (clusterOf[i] == cluster) {
                bins.add(i);
            }
        }
        Cut best = new Cut(0, List.of());
        for (int axis = 0; axis < 3; axis++) {
            Cut cut = bestCut(bins, axis);
            best = cut.gain() > best.gain() ? cut : best;
        }
        return best;
    }

    private Cut bestCut(List<Integer> bins, int axis) {
        List<Integer> ordered = new ArrayList<>(bins);
        ordered.sort(Comparator.comparingDouble(bin -> places[bin][axis]));
        double[] whole = new double[4];
        ordered.forEach(bin -> add(bin, whole));
        double[] lower = new double[4];
        double best = 0;
        int after = 0;
        for (int i = 0; i + 1 < ordered.size(); i++) {
            add(ordered.get(i), lower);
            if (places[ordered.get(i)][axis] == places[ordered.get(i + 1)][axis]) {
                continue;
            }
            double gain = 0;
            for (int k = 0; k < 3; k++) {
                double step = lower[k] / lower[3] - (whole[k] - lower[k]) / (whole[3] - lower[3]);
                gain += step * step * lower[3] * (whole[3] - lower[3]) / whole[3];
            }
            if (gain > best) {
                best = gain;
                after = i + 1;
            }
        }
        return new Cut(best, best > 0 ? List.copyOf(ordered.subList(after, ordered.size())) : List.of());
    }

    private void add(int bin, double[] sums) {
        for (int k = 0; k < 3; k++) {
            sums[k] += counts[bin] * places[bin][k];
        }
        sums[3] += counts[bin];
    }

    /** Lloyd's rounds; gives the clusters' middles and counts. */
    private double[][] settle(int clusters) {
        double[][] middles = middles(clusters);
        for (int round = 0; round < MOST_ROUNDS && reassign(middles); round++) {
            middles = middles(clusters);
        }
        return middles;
    }

    private double[][] middles(int clusters) {
        double[][] middles = new double[clusters][4];
        for (int bin = 0; bin < clusterOf.length; bin++) {
            add(bin, middles[clusterOf[bin]]);
        }
        for (double[] middle : middles) {
            for (int k = 0; k < 3; k++) {
                middle[k] /= Math.max(1, middle[3]);
            }
        }
        return middles;
    }

    /** Gives each bin to the nearest middle, of equally near ones to its own or the first; tells whether any changed. */
    private boolean reassign(double[][] middles) {
        boolean changed = false;
        for (int bin = 0; bin < clusterOf.length; bin++) {
            int nearest = clusterOf[bin];
            double least = distance(places[bin], middles[nearest]);
            for (int i = 0; i < middles.length; i++) {
                double distance = middles[i][3] > 0 ? distance(places[bin], middles[i]) : Double.POSITIVE_INFINITY;
                if (distance < least) {
                    least = distance;
                    nearest = i;
                }
            }
            changed |= nearest != clusterOf[bin];
            clusterOf[bin] = nearest;
        }
        return changed;
    }

    private static double distance(double[] one, double[] other) {
        double l = one[0] - other[0];
        double a = one[1] - other[1];
        double b = one[2] - other[2];
        return l * l + a * a + b * b;
    }

    private List<MainColor> told(double[][] middles) {
        double all = 0;
        for (double count : counts) {
            all += count;
        }
        List<MainColor> told = new ArrayList<>();
        for (double[] middle : middles) {
            if (middle[3] > 0) {
                told.add(new MainColor(new Lab(middle[0], middle[1], middle[2]), middle[3] / all));
            }
        }
        told.sort(Comparator.comparingDouble(color -> -color.share()));
        return told;
    }
}
