package umbercard.notan;

import umbercard.model.Thumbnail;

/** Folds a thumbnail's marks, in order, into its dark region. */
public final class Fold {
    private Fold() {}

    /**
     * The design of a thumbnail in a frame {@code ratio} wide and 1 high: a light or dark card, each mark that lays joined to
     * the dark and each that lifts cut out of it. Outlines fill by the non-zero rule. Hidden marks count nothing; what lies
     * outside the frame is cut off. The dark share is right to 1e-6 of the frame for a few hundred curved marks.
     */
    public static Design of(Thumbnail thumbnail, double ratio) {
        return new FoldCache().of(thumbnail, ratio);
    }
}
