package umbercard.photo;

import java.util.ArrayList;
import java.util.List;
import umbercard.color.MunsellValue;
import umbercard.picture.ValueField;

/**
 * How much of a picture lies below each value: the share 0..1 over the Munsell value 0..10 (ASTM D1535), on
 * {@value #LEVELS} levels and straight between them. Made once for a picture, it answers in microseconds.
 */
public final class ValueCurve {
    /** How many levels of value there are. */
    public static final int LEVELS = 512;

    private final long[] histogram;
    private final double[] below;

    private ValueCurve(long[] histogram) {
        this.histogram = histogram;
        this.below = new double[LEVELS + 1];
        long count = 0;
        for (long level : histogram) {
            count += level;
        }
        long sum = 0;
        for (int i = 0; i < LEVELS; i++) {
            sum += histogram[i];
            below[i + 1] = (double) sum / count;
        }
    }

    /** The curve of a field. */
    public static ValueCurve of(ValueField field) {
        Counts counts = new Counts();
        int width = field.width();
        float[] luminance = field.luminance();
        Bands.each(field.height(), (from, to) -> {
            int[] own = counts.ofBand();
            for (int i = from * width; i < to * width; i++) {
                Counts.count(luminance[i], own);
            }
            counts.add(own);
        });
        return counts.curve();
    }

    /** Counts samples on each level, some bands of a picture at once. */
    static final class Counts {
        private final long[] all = new long[LEVELS];

        /** Counts to begin a band with. */
        int[] ofBand() {
            return new int[LEVELS];
        }

        static void count(float luminance, int[] band) {
            band[LevelTable.levelOf(luminance)]++;
        }

        synchronized void add(int[] band) {
            for (int i = 0; i < LEVELS; i++) {
                all[i] += band[i];
            }
        }

        /** Once all bands are added. */
        synchronized ValueCurve curve() {
            return new ValueCurve(all.clone());
        }
    }

    /** The share, 0..1, that lies below a Munsell value; values beyond 0..10 are clipped. */
    public double shareBelow(double value) {
        double at = Math.min(LEVELS, Math.max(0, value * LEVELS / 10));
        int level = Math.min(LEVELS - 1, (int) at);
        return below[level] + (at - level) * (below[level + 1] - below[level]);
    }

    /**
     * The least Munsell value below which at least a share lies: everything up to it must go dark for so much dark.
     *
     * @param share 0..1
     */
    public double valueFor(double share) {
        int level = 0;
        while (level < LEVELS - 1 && below[level + 1] < share) {
            level++;
        }
        double step = below[level + 1] - below[level];
        double part = step > 0 ? Math.min(1, Math.max(0, (share - below[level]) / step)) : 0;
        return 10 * (level + part) / LEVELS;
    }

    /** The split that parts the values best (Otsu 1979); 5 where all lie on one level. */
    public double otsu() {
        int level = Otsu.of(histogram).level();
        return level < 0 ? 5 : border(level);
    }

    private static double border(int level) {
        return 10.0 * (level + 1) / LEVELS;
    }

    /**
     * Steps of value, the split always one of the borders: first in two at the split, then again and again the step that
     * gains most by it is parted where Otsu's way parts it. So each picture in more values refines the one in fewer, and
     * the masses of the two-value design stay in sight. Each step is shown in its mean value; equal steps of value would
     * leave some of them nearly empty in most pictures. That the split stays is our choice; common practice, no source, is
     * only that few values are looked at first.
     *
     * @param count at most so many steps, 2 or more; fewer where nothing is left to part
     * @param split Munsell value 0..10
     */
    public ValueSteps steps(int count, double split) {
        int at = (int) Math.round(Math.min(10, Math.max(0, split)) * LEVELS / 10);
        List<Double> borders = new ArrayList<>(List.of(split));
        List<Integer> cuts = new ArrayList<>(List.of(0, at, LEVELS));
        while (borders.size() < count - 1 && part(cuts, borders)) {
            borders.sort(null);
        }
        List<Double> values = new ArrayList<>();
        for (int i = 1; i < cuts.size(); i++) {
            values.add(mean(cuts.get(i - 1), cuts.get(i)));
        }
        return new ValueSteps(borders, values);
    }

    /** Parts the step that gains most; false where none gains anything. */
    private boolean part(List<Integer> cuts, List<Double> borders) {
        int where = -1;
        Otsu.Parting best = new Otsu.Parting(-1, 0);
        for (int i = 1; i < cuts.size(); i++) {
            Otsu.Parting parting = Otsu.of(histogram, cuts.get(i - 1), cuts.get(i));
            if (parting.gain() > best.gain()) {
                best = parting;
                where = i;
            }
        }
        if (where > 0) {
            cuts.add(where, best.level() + 1);
            borders.add(border(best.level()));
        }
        return where > 0;
    }

    /** The mean value of the samples on some levels; the middle of the levels where there are none. */
    private double mean(int from, int to) {
        double count = 0;
        double sum = 0;
        for (int i = from; i < to; i++) {
            count += histogram[i];
            sum += (i + 0.5) * histogram[i];
        }
        return 10 * (count > 0 ? sum / count : (from + to) / 2.0) / LEVELS;
    }

    /** The level of Munsell value that a luminance belongs to. */
    private static final class LevelTable {
        private static final int STEPS = 1 << 16;
        private static final short[] LEVEL = new short[STEPS];

        static {
            int level = 0;
            double next = MunsellValue.luminance(10.0 / LEVELS);
            for (int i = 0; i < STEPS; i++) {
                while (level < LEVELS - 1 && (i + 0.5) / STEPS >= next) {
                    level++;
                    next = MunsellValue.luminance(10.0 * (level + 1) / LEVELS);
                }
                LEVEL[i] = (short) level;
            }
        }

        static int levelOf(float luminance) {
            return LEVEL[Math.min(STEPS - 1, Math.max(0, (int) (luminance * STEPS)))];
        }
    }
}
