package umbercard.desk.notes;

/** Where a strip that is dragged comes to lie. Gaps are counted from 0, before the first strip, to the number of strips. */
final class Reorder {
    private Reorder() {}

    /**
     * The gap nearest to a height in the list.
     *
     * @param y pixels from the top of the first strip; may lie outside the list
     * @param pitch pixels from one strip to the next, over 0
     * @param strips how many there are
     */
    static int gapAt(int y, int pitch, int strips) {
        return Math.max(0, Math.min(strips, Math.round((float) y / pitch)));
    }

    /** The place, counted from 0, of a strip that leaves place {@code from} and is dropped into {@code gap}. */
    static int placeAfter(int from, int gap) {
        return gap > from ? gap - 1 : gap;
    }
}
