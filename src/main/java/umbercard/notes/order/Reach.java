package umbercard.notes.order;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.List;

/** Which of some things go before which, directly or by way of others. Immutable. */
final class Reach {
    private final List<BitSet> after = new ArrayList<>();

    Reach(int n, Collection<Edge> edges) {
        for (int i = 0; i < n; i++) {
            after.add(new BitSet(n));
        }
        edges.forEach(edge -> after.get(edge.before()).set(edge.after()));
        // Warshall's closure.
        for (int middle = 0; middle < n; middle++) {
            for (BitSet row : after) {
                if (row.get(middle)) {
                    row.or(after.get(middle));
                }
            }
        }
    }

    private Reach(Reach other) {
        other.after.forEach(row -> after.add((BitSet) row.clone()));
    }

    /** The same with one more before another. */
    Reach with(int one, int other) {
        Reach more = new Reach(this);
        more.add(one, other);
        return more;
    }

    boolean isBefore(int one, int other) {
        return after.get(one).get(other);
    }

    /** Whether each goes before the other: they lie on a circle. */
    boolean isCircular(int one, int other) {
        return isBefore(one, other) && isBefore(other, one);
    }

    private void add(int one, int other) {
        for (int i = 0; i < after.size(); i++) {
            if (i == one || isBefore(i, one)) {
                after.get(i).set(other);
                after.get(i).or(after.get(other));
            }
        }
    }
}
