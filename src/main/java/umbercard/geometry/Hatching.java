package umbercard.geometry;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;

/** What a figure covers of each of some {@link Lines}, by the non-zero rule. Immutable. */
public final class Hatching {
    private final int first;

    /** Where each line's ends start in {@link #ends}, and where the last line's end. */
    private final int[] starts;

    /** Where stretches begin and end, in turn, line by line. */
    private final double[] ends;

    private Hatching(int first, int[] starts, double[] ends) {
        this.first = first;
        this.starts = starts;
        this.ends = ends;
    }

    /** Takes the stretches that closed walks wind round between both ends of each line. */
    static Hatching of(LineCrossings crossings, IntToDoubleFunction from, IntToDoubleFunction to) {
        crossings.sort();
        int first = crossings.first();
        int[] starts = new int[crossings.end() - first + 1];
        double[] ends = new double[crossings.size()];
        Spans spans = new Spans();
        for (int line = first; line < crossings.end(); line++) {
            spans.clear();
            crossings.fill(line, winding -> winding != 0, from.applyAsDouble(line), to.applyAsDouble(line), spans);
            spans.copyTo(ends, starts[line - first]);
            starts[line - first + 1] = starts[line - first] + 2 * spans.size();
        }
        return new Hatching(first, starts, Arrays.copyOf(ends, starts[starts.length - 1]));
    }

    /** The first line that may be covered. */
    public int first() {
        return first;
    }

    /** The line after the last that may be covered. */
    public int end() {
        return first + starts.length - 1;
    }

    /**
     * Whether one stretch of {@code spans} holds all that is covered of a line from {@link #first()} to before {@link
     * #end()}.
     */
    public boolean liesIn(Spans spans, int line) {
        int from = starts[line - first];
        int to = starts[line - first + 1];
        return from == to || spans.covers(ends[from], ends[to - 1]);
    }

    /** Adds what is covered of a line from {@link #first()} to before {@link #end()}. */
    public void addTo(Spans spans, int line) {
        for (int i = starts[line - first]; i < starts[line - first + 1]; i += 2) {
            spans.add(ends[i], ends[i + 1]);
        }
    }

    /** Takes out what is covered of a line from {@link #first()} to before {@link #end()}. */
    public void removeFrom(Spans spans, int line) {
        for (int i = starts[line - first]; i < starts[line - first + 1]; i += 2) {
            spans.remove(ends[i], ends[i + 1]);
        }
    }
}
