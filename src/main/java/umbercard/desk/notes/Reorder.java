package umbercard.desk.notes;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Where strips that are dragged come to lie. */
final class Reorder {
    private Reorder() {}

    /**
     * The edge nearest to a height in the list; of two as near the upper.
     *
     * @param y pixels from the top of the first strip; may lie outside the list
     * @param edges above the first strip or break, between two of them, and below the last, from top to bottom; at least one
     * @return counted from 0
     */
    static int gapAt(int y, List<Integer> edges) {
        return IntStream.range(0, edges.size())
                .boxed()
                .min(Comparator.comparingInt(gap -> Math.abs(edges.get(gap) - y)))
                .orElseThrow();
    }
}
