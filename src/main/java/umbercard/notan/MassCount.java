package umbercard.notan;

import java.util.Arrays;
import umbercard.geometry.Hatch;
import umbercard.geometry.Spans;

/**
 * Counts dark and light masses while the hand moves, about as {@link umbercard.geometry.Masses} does precisely: gaps in
 * the dark that are narrower than the eye's width are closed, then what is narrower is opened (Serra 1982, "Image analysis
 * and mathematical morphology"), then what nearly meets is joined; what hangs together is a mass, and light is the rest.
 * On cells a third of the width wide, along hatch lines, with a cell and its four neighbors for a disc: so a neck or a gap
 * counts as one at about the width, give or take half of it.
 */
final class MassCount {
    private static final int CELLS = 3;

    /** Which value spreads; see {@link #spread}. */
    private static final long DARK = 0;

    private static final long LIGHT = -1;

    private final int step;
    private final double width;
    private final int words;

    /** Bit rows: what lies in the frame, what is dark there, and the stages of closing, opening and joining. */
    private final long[][] frame;

    private final long[][] dark;
    private final long[][] spread;
    private final long[][] closed;
    private final long[][] shrunk;
    private final long[][] opened;
    private final long[][] joined;
    private final long[] none;
    private final RunLabels labels = new RunLabels();

    private int firstTouched = Integer.MAX_VALUE;
    private int lastTouched = -1;

    /** @param neck the least width of a neck or a gap, in units */
    MassCount(Hatch hatch, double neck) {
        step = Math.max(1, (int) Math.round(neck / CELLS / hatch.distance()));
        width = step * hatch.distance();
        int rows = hatch.size() / step;
        double right = 0;
        for (int row = 0; row < rows; row++) {
            Spans whole = hatch.whole(line(row));
            right = whole.size() == 0 ? right : Math.max(right, whole.to(0));
        }
        words = (int) (right / width) / Long.SIZE + 1;
        frame = new long[rows][words];
        for (int row = 0; row < rows; row++) {
            fill(hatch.whole(line(row)), frame[row]);
        }
        dark = new long[rows][words];
        spread = new long[rows][words];
        closed = new long[rows][words];
        shrunk = new long[rows][words];
        opened = new long[rows][words];
        joined = new long[rows][words];
        none = new long[words];
    }

    private int line(int row) {
        return row * step + step / 2;
    }

    /** Takes what is dark of a hatch line; most lines do not count. */
    void take(int line, Spans spans) {
        int row = line / step;
        if (row < dark.length && line(row) == line) {
            Arrays.fill(dark[row], 0);
            fill(spans, dark[row]);
            firstTouched = Math.min(firstTouched, row);
            lastTouched = Math.max(lastTouched, row);
        }
    }

    private void fill(Spans spans, long[] row) {
        for (int i = 0; i < spans.size(); i++) {
            int from = (int) Math.ceil(spans.from(i) / width - 0.5);
            int to = (int) Math.ceil(spans.to(i) / width - 0.5);
            for (int word = from >> 6; from < to && word <= (to - 1) >> 6; word++) {
                long bits = word == from >> 6 ? -1L << from : -1L;
                row[word] |= word == (to - 1) >> 6 ? bits & -1L >>> -to : bits;
            }
        }
    }

    /**
     * Counts the masses that are at least that large.
     *
     * @param least in square units
     */
    MassCounts count(double least) {
        if (lastTouched >= 0) {
            spread(dark, spread, 1, DARK);
            spread(spread, closed, 2, LIGHT);
            spread(closed, shrunk, 3, LIGHT);
            spread(shrunk, opened, 4, DARK);
            spread(opened, joined, 5, DARK);
            firstTouched = Integer.MAX_VALUE;
            lastTouched = -1;
        }
        labels.clear();
        for (int row = 0; row < joined.length; row++) {
            labels.addRow(frame[row], joined[row]);
        }
        return labels.counts((int) Math.ceil(least / (width * width)));
    }

    /**
     * Lets bits spread to their neighbors, in the touched rows and {@code reach} beyond.
     *
     * @param flip 0 for the dark, -1 for the light: spreading that wears the dark away, but not from beyond the frame
     */
    private void spread(long[][] from, long[][] to, int reach, long flip) {
        for (int row = Math.max(0, firstTouched - reach); row < Math.min(to.length, lastTouched + reach + 1); row++) {
            long[] in = frame[row];
            long[] inAbove = row == 0 ? none : frame[row - 1];
            long[] inBelow = row + 1 == to.length ? none : frame[row + 1];
            long[] here = from[row];
            long[] above = row == 0 ? none : from[row - 1];
            long[] below = row + 1 == to.length ? none : from[row + 1];
            long[] result = to[row];
            long before = 0;
            long now = here[0] ^ (in[0] & flip);
            for (int i = 0; i < words; i++) {
                long next = i + 1 < words ? here[i + 1] ^ (in[i + 1] & flip) : 0;
                long bits = now | (now << 1) | (now >>> 1) | (before >>> 63) | (next << 63);
                bits |= (above[i] ^ (inAbove[i] & flip)) | (below[i] ^ (inBelow[i] & flip));
                result[i] = (bits & in[i]) ^ (in[i] & flip);
                before = now;
                now = next;
            }
        }
    }
}
