package umbercard.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Disjoint stretches of a line, from left to right, with gaps between them. Grows and shrinks in place; not for several
 * threads at once.
 */
public final class Spans {
    /** Where stretches begin and end, in turn, rising. */
    private double[] ends = new double[8];

    private int count;

    /** How many stretches there are. */
    public int size() {
        return count / 2;
    }

    /** Where a stretch begins; {@code span} is from 0 to under {@link #size()}. */
    public double from(int span) {
        return ends[2 * span];
    }

    /** Where a stretch ends; {@code span} is from 0 to under {@link #size()}. */
    public double to(int span) {
        return ends[2 * span + 1];
    }

    /** The length of all stretches together. */
    public double length() {
        double length = 0;
        for (int i = 0; i < count; i += 2) {
            length += ends[i + 1] - ends[i];
        }
        return length;
    }

    /** Whether one stretch reaches from a place to another. */
    public boolean covers(double from, double to) {
        int end = atOrAfter(to);
        return (end & 1) == 1 && ends[end - 1] <= from;
    }

    /** Leaves nothing. */
    public void clear() {
        count = 0;
    }

    /** Becomes equal to another. */
    public void set(Spans other) {
        if (ends.length < other.count) {
            ends = Arrays.copyOf(other.ends, other.ends.length);
        } else {
            System.arraycopy(other.ends, 0, ends, 0, other.count);
        }
        count = other.count;
    }

    /** As stretches that stay as they are. */
    List<Stretch> stretches() {
        List<Stretch> stretches = new ArrayList<>(size());
        for (int i = 0; i < count; i += 2) {
            stretches.add(new Stretch(ends[i], ends[i + 1]));
        }
        return stretches;
    }

    /** Writes all ends, in turn and rising, from a place of {@code target} on. */
    void copyTo(double[] target, int at) {
        System.arraycopy(ends, 0, target, at, count);
    }

    /** Adds the stretch between two places; nothing unless {@code from} lies before {@code to}. */
    public void add(double from, double to) {
        if (from < to) {
            replace(from, to, 0);
        }
    }

    /** Takes out the stretch between two places; nothing unless {@code from} lies before {@code to}. */
    public void remove(double from, double to) {
        if (from < to) {
            replace(from, to, 1);
        }
    }

    /** Adds all stretches of another. */
    public void add(Spans other) {
        for (int i = 0; i < other.count; i += 2) {
            replace(other.ends[i], other.ends[i + 1], 0);
        }
    }

    /** Takes out all stretches of another. */
    public void remove(Spans other) {
        if (count > 0) {
            double first = ends[0];
            double last = ends[count - 1];
            for (int i = other.atOrAfter(first) & ~1; i < other.count && other.ends[i] < last; i += 2) {
                replace(other.ends[i], other.ends[i + 1], 1);
            }
        }
    }

    /**
     * Drops all ends from {@code from} to {@code to} and puts one at either place where what lies beyond it asks for it.
     *
     * @param bare 0 if the stretch is covered then, 1 if it is bare
     */
    private void replace(double from, double to, int bare) {
        int low = atOrAfter(from);
        int high = after(to, low);
        int kept = ((low & 1) == bare ? 1 : 0) + ((high & 1) == bare ? 1 : 0);
        int grown = kept - (high - low);
        if (count + grown > ends.length) {
            ends = Arrays.copyOf(ends, 2 * ends.length);
        }
        if (grown != 0) {
            System.arraycopy(ends, high, ends, high + grown, count - high);
            count += grown;
        }
        int at = low;
        if ((low & 1) == bare) {
            ends[at++] = from;
        }
        if ((high & 1) == bare) {
            ends[at] = to;
        }
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Spans spans && Arrays.equals(ends, 0, count, spans.ends, 0, spans.count);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(Arrays.copyOf(ends, count));
    }

    private int atOrAfter(double place) {
        int low = 0;
        int high = count;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (ends[middle] < place) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** The first end beyond a place, which mostly is not far from one that is known to lie before it. */
    private int after(double place, int from) {
        int at = from;
        while (at < count && ends[at] <= place) {
            at++;
        }
        return at;
    }
}
