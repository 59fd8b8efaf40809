package umbercard.notan;

import java.util.Arrays;

/**
 * Finds what hangs together in two values, row by row: runs of one value join those of the same value that they meet in the row above
 * (Rosenfeld and Pfaltz 1966, with the disjoint sets of Tarjan 1975).
 */
final class RunLabels {
    private int[] parents = new int[1024];
    private int[] sizes = new int[1024];
    private boolean[] dark = new boolean[1024];
    private int labels;

    /** The runs of the last row and of the one being added: where each ends, and its label. */
    private int[] lastEnds = new int[64];

    private int[] lastLabels = new int[64];
    private int lastRuns;
    private int[] ends = new int[64];
    private int[] runLabels = new int[64];
    private int runs;

    /** The first place of the last row's first run, and of the one being added. */
    private int lastStart;

    private int start;

    /** Adds a row: the bits of {@code frame}, a single run, are dark where those of {@code row} are. */
    void addRow(long[] frame, long[] row) {
        swap();
        runs = 0;
        start = -1;
        long carry = 0;
        for (int i = 0; i < row.length; i++) {
            // Bits change where a run begins: one value's edge, or the frame's.
            long darks = row[i] ^ ((row[i] << 1) | (carry & 1));
            long frames = frame[i] ^ ((frame[i] << 1) | (carry >>> 1));
            carry = (row[i] >>> 63) | (frame[i] >>> 63 << 1);
            for (long left = darks | frames; left != 0; left &= left - 1) {
                int bit = Long.numberOfTrailingZeros(left);
                boundary(i * Long.SIZE + bit, (frame[i] >>> bit & 1) != 0, (row[i] >>> bit & 1) != 0);
            }
        }
        if (carry >>> 1 != 0) {
            end(row.length * Long.SIZE);
        }
        join();
    }

    private void swap() {
        int[] spare = lastEnds;
        lastEnds = ends;
        ends = spare;
        spare = lastLabels;
        lastLabels = runLabels;
        runLabels = spare;
        lastRuns = runs;
        lastStart = start;
    }

    /** At a place where the value changes: the run before ends there, and another begins if that lies in the frame. */
    private void boundary(int place, boolean inFrame, boolean isDark) {
        if (start < 0) {
            start = place;
        } else {
            end(place);
        }
        if (inFrame) {
            begin(isDark);
        }
    }

    private void begin(boolean isDark) {
        if (labels == parents.length) {
            parents = Arrays.copyOf(parents, 2 * labels);
            sizes = Arrays.copyOf(sizes, 2 * labels);
            dark = Arrays.copyOf(dark, 2 * labels);
        }
        if (runs == ends.length) {
            ends = Arrays.copyOf(ends, 2 * runs);
            runLabels = Arrays.copyOf(runLabels, 2 * runs);
        }
        parents[labels] = labels;
        sizes[labels] = 0;
        dark[labels] = isDark;
        runLabels[runs++] = labels++;
    }

    private void end(int place) {
        ends[runs - 1] = place;
        sizes[runLabels[runs - 1]] = place - (runs == 1 ? start : ends[runs - 2]);
    }

    private void join() {
        int last = 0;
        int now = 0;
        int lastFrom = lastStart;
        int from = start;
        while (last < lastRuns && now < runs) {
            boolean meet = Math.min(lastEnds[last], ends[now]) > Math.max(lastFrom, from);
            if (meet && dark[lastLabels[last]] == dark[runLabels[now]]) {
                join(lastLabels[last], runLabels[now]);
            }
            if (lastEnds[last] <= ends[now]) {
                lastFrom = lastEnds[last++];
            } else {
                from = ends[now++];
            }
        }
    }

    private void join(int one, int two) {
        int a = root(one);
        int b = root(two);
        if (a != b) {
            parents[b] = a;
            sizes[a] += sizes[b];
        }
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
        for (int label = 0; label < labels; label++) {
            if (parents[label] == label && sizes[label] >= least) {
                darks += dark[label] ? 1 : 0;
                lights += dark[label] ? 0 : 1;
            }
        }
        return new MassCounts(darks, lights);
    }
}
