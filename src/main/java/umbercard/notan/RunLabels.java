package umbercard.notan;

import java.util.Arrays;

/**
 * Finds what hangs together in two values, row by row: runs of one value join those of the same value that they meet in
 * the row above (Rosenfeld and Pfaltz 1966, with the disjoint sets of Tarjan 1975).
 */
final class RunLabels {
    private int[] parents = new int[256];
    private int[] sizes = new int[256];
    private boolean[] dark = new boolean[256];
    private int labels;

    private Row last = new Row();
    private Row now = new Row();

    /** The runs of a row, one next to the other: where the first starts, where each ends, its value, and its label. */
    private static final class Row {
        int start;
        int[] ends = new int[64];
        int[] labels = new int[64];
        boolean[] dark = new boolean[64];
        int runs;

        void begin(int place, boolean isDark) {
            if (runs == ends.length) {
                ends = Arrays.copyOf(ends, 2 * runs);
                labels = Arrays.copyOf(labels, 2 * runs);
                dark = Arrays.copyOf(dark, 2 * runs);
            }
            if (runs == 0) {
                start = place;
            }
            labels[runs] = -1;
            dark[runs++] = isDark;
        }

        void end(int place) {
            if (runs > 0) {
                ends[runs - 1] = place;
            }
        }
    }

    /** Forgets all rows. */
    void clear() {
        labels = 0;
        now.runs = 0;
    }

    /** Adds a row: the bits of {@code frame}, a single run, are dark where those of {@code row} are. */
    void addRow(long[] frame, long[] row) {
        Row spare = last;
        last = now;
        now = spare;
        now.runs = 0;
        long lastDark = 0;
        long lastIn = 0;
        for (int i = 0; i < row.length; i++) {
            // Bits change where a run begins: one value's edge, or the frame's.
            long darks = row[i] ^ ((row[i] << 1) | lastDark);
            long frames = frame[i] ^ ((frame[i] << 1) | lastIn);
            lastDark = row[i] >>> 63;
            lastIn = frame[i] >>> 63;
            for (long left = darks | frames; left != 0; left &= left - 1) {
                int bit = Long.numberOfTrailingZeros(left);
                now.end(i * Long.SIZE + bit);
                if ((frame[i] >>> bit & 1) != 0) {
                    now.begin(i * Long.SIZE + bit, (row[i] >>> bit & 1) != 0);
                }
            }
        }
        if (lastIn != 0) {
            now.end(row.length * Long.SIZE);
        }
        join();
        count();
    }

    /** Gives runs the labels of those that they meet. */
    private void join() {
        int above = 0;
        int run = 0;
        int aboveFrom = last.start;
        int from = now.start;
        while (above < last.runs && run < now.runs) {
            int aboveEnd = last.ends[above];
            int end = now.ends[run];
            if (last.dark[above] == now.dark[run] && Math.min(aboveEnd, end) > Math.max(aboveFrom, from)) {
                now.labels[run] =
                        now.labels[run] < 0 ? last.labels[above] : joined(now.labels[run], last.labels[above]);
            }
            if (aboveEnd <= end) {
                aboveFrom = aboveEnd;
                above++;
            } else {
                from = end;
                run++;
            }
        }
    }

    private void count() {
        int from = now.start;
        for (int run = 0; run < now.runs; run++) {
            if (now.labels[run] < 0) {
                now.labels[run] = fresh(now.dark[run]);
            }
            sizes[now.labels[run]] += now.ends[run] - from;
            from = now.ends[run];
        }
    }

    private int fresh(boolean isDark) {
        if (labels == parents.length) {
            parents = Arrays.copyOf(parents, 2 * labels);
            sizes = Arrays.copyOf(sizes, 2 * labels);
            dark = Arrays.copyOf(dark, 2 * labels);
        }
        parents[labels] = labels;
        sizes[labels] = 0;
        dark[labels] = isDark;
        return labels++;
    }

    private int joined(int one, int two) {
        if (one == two) {
            return one;
        }
        int a = root(one);
        int b = root(two);
        if (a != b) {
            parents[b] = a;
        }
        return a;
    }

    private int root(int label) {
        int at = label;
        while (parents[at] != at) {
            parents[at] = parents[parents[at]];
            at = parents[at];
        }
        return at;
    }

    /** The masses of at least that many places. */
    MassCounts counts(int least) {
        int darks = 0;
        int lights = 0;
        for (int label = labels - 1; label >= 0; label--) {
            int root = root(label);
            if (root != label) {
                sizes[root] += sizes[label];
                sizes[label] = 0;
            }
        }
        for (int label = 0; label < labels; label++) {
            if (parents[label] == label && sizes[label] >= least) {
                darks += dark[label] ? 1 : 0;
                lights += dark[label] ? 0 : 1;
            }
        }
        return new MassCounts(darks, lights);
    }
}
