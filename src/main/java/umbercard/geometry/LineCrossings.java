package umbercard.geometry;

import java.util.Arrays;
import java.util.function.IntPredicate;

/** Where closed walks cross numbered lines, gathered in any order, and the stretches of each line that a rule accepts. */
final class LineCrossings {
    private int[] lines = new int[256];

    /** The last bit of a place is spent on the way of the crossing, so that sorting places carries it along. */
    private double[] places = new double[256];

    private int count;

    /** Where each line's crossings begin once sorted, and where the last line's end. */
    private int[] starts = {0};

    private double[] sorted = {};
    private int first;

    int size() {
        return count;
    }

    /** Notes that the winding number gains 1 where one passes {@code place} on a line, or loses 1. */
    void add(int line, double place, boolean gain) {
        if (count == lines.length) {
            lines = Arrays.copyOf(lines, 2 * count);
            places = Arrays.copyOf(places, 2 * count);
        }
        lines[count] = line;
        long bits = Double.doubleToRawLongBits(place);
        places[count] = Double.longBitsToDouble(gain ? bits | 1 : bits & ~1L);
        count++;
    }

    /** Sorts what was gathered by lines, then by place. */
    void sort() {
        first = count == 0 ? 0 : Integer.MAX_VALUE;
        int last = first == 0 ? -1 : 0;
        for (int i = 0; i < count; i++) {
            first = Math.min(first, lines[i]);
            last = Math.max(last, lines[i]);
        }
        int[] at = new int[last - first + 3];
        for (int i = 0; i < count; i++) {
            at[lines[i] - first + 2]++;
        }
        for (int i = 2; i < at.length; i++) {
            at[i] += at[i - 1];
        }
        sorted = new double[count];
        for (int i = 0; i < count; i++) {
            sorted[at[lines[i] - first + 1]++] = places[i];
        }
        starts = at;
        for (int line = first(); line < end(); line++) {
            Arrays.sort(sorted, starts[line - first], starts[line - first + 1]);
        }
    }

    /** The first line that is crossed. */
    int first() {
        return first;
    }

    /** The line after the last that is crossed. */
    int end() {
        return first + starts.length - 2;
    }

    /**
     * Adds to {@code spans} the stretches of a line between two places whose winding number {@code inside} accepts; it
     * must refuse 0.
     */
    void fill(int line, IntPredicate inside, double from, double to, Spans spans) {
        int winding = 0;
        double begin = from;
        boolean covered = false;
        for (int i = starts[line - first]; i < starts[line - first + 1]; i++) {
            winding += (Double.doubleToRawLongBits(sorted[i]) & 1) == 0 ? -1 : 1;
            if (inside.test(winding) != covered) {
                double place = Math.max(from, Math.min(to, sorted[i]));
                if (covered) {
                    spans.add(begin, place);
                }
                begin = place;
                covered = !covered;
            }
        }
    }
}
