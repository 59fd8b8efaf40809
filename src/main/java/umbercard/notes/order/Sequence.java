package umbercard.notes.order;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Puts notes in a row: each after those it follows, pinned ones where they are, and otherwise the first of the present order
 * first. Where the pins leave room for it, all constraints hold: every note has a place from which on it may stand and one by
 * which it must, and of what may stand at a place the one is taken with which the rest can still be placed, the first of
 * the present order where several are. (One machine, jobs of one length, release times and deadlines: J. R. Jackson's rule,
 * the earliest deadline first, tells whether the rest can be placed.)
 */
final class Sequence {
    private final int n;
    private final Reach reach;
    private final boolean[] pinned;
    private final int[] release;
    private final int[] deadline;

    private Sequence(List<Laid> notes, Reach reach) {
        n = notes.size();
        this.reach = reach;
        pinned = new boolean[n];
        release = new int[n];
        deadline = new int[n];
        Arrays.fill(deadline, n - 1);
        for (int i = 0; i < n; i++) {
            pinned[i] = notes.get(i).note().pinned();
        }
        for (int pin = 0; pin < n; pin++) {
            for (int i = 0; pinned[pin] && i < n; i++) {
                if (reach.isBefore(pin, i)) {
                    release[i] = Math.max(release[i], pin + 1);
                }
                if (reach.isBefore(i, pin)) {
                    deadline[i] = Math.min(deadline[i], pin - 1);
                }
            }
        }
    }

    /**
     * The places of the notes now, in their new order.
     *
     * @param notes in their present order
     * @param reach which go before which, without a circle
     */
    static List<Integer> of(List<Laid> notes, Reach reach) {
        return new Sequence(notes, reach).placed();
    }

    /** Whether the pins leave room for all that goes before another. */
    static boolean hasRoom(List<Laid> notes, Reach reach) {
        Sequence sequence = new Sequence(notes, reach);
        return sequence.pinsHold() && sequence.isFeasible(0, new boolean[notes.size()]);
    }

    private boolean pinsHold() {
        return IntStream.range(0, n)
                .filter(i -> pinned[i])
                .allMatch(i -> IntStream.range(i + 1, n).noneMatch(k -> pinned[k] && reach.isBefore(k, i)));
    }

    private List<Integer> placed() {
        boolean[] done = new boolean[n];
        List<Integer> row = new ArrayList<>();
        for (int place = 0; place < n; place++) {
            int next = pinned[place] ? place : next(place, done);
            done[next] = true;
            row.add(next);
        }
        return row;
    }

    private int next(int place, boolean[] done) {
        List<Integer> ready = ready(done);
        Optional<Integer> first = ready.stream()
                .filter(i -> release[i] <= place)
                .filter(i -> isFeasible(place + 1, with(done, i)))
                .findFirst();
        return first.orElseGet(() -> ready.stream()
                .min(Comparator.comparing((Integer i) -> release[i] > place)
                        .thenComparingInt(i -> deadline[i])
                        .thenComparingInt(i -> i))
                .orElseThrow());
    }

    /** Those that are not placed and follow none that is not; pinned ones stand where they stand. */
    private List<Integer> ready(boolean[] done) {
        return IntStream.range(0, n)
                .filter(i -> !done[i] && !pinned[i])
                .filter(i -> IntStream.range(0, n).noneMatch(k -> !done[k] && !pinned[k] && reach.isBefore(k, i)))
                .boxed()
                .toList();
    }

    private static boolean[] with(boolean[] done, int one) {
        boolean[] more = done.clone();
        more[one] = true;
        return more;
    }

    /** Whether the rest can be placed from a place on. */
    private boolean isFeasible(int from, boolean[] before) {
        boolean[] done = before.clone();
        for (int place = from; place < n; place++) {
            if (pinned[place]) {
                done[place] = true;
            } else {
                int here = place;
                Optional<Integer> next = ready(done).stream()
                        .filter(i -> release[i] <= here)
                        .min(Comparator.comparingInt(i -> deadline[i]));
                if (next.isEmpty() || deadline[next.get()] < place) {
                    return false;
                }
                done[next.get()] = true;
            }
        }
        return true;
    }
}
