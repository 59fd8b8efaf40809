package umbercard.notan;

import umbercard.geometry.Region;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;

/** Folds a thumbnail's marks, in order, into its dark region. */
public final class Fold {
    private Fold() {}

    /**
     * The design of a thumbnail in a frame {@code ratio} wide and 1 high. Hidden marks count nothing; what lies outside the
     * frame is cut off.
     */
    public static Design of(Thumbnail thumbnail, double ratio) {
        Region frame = Region.rectangle(0, 0, ratio, 1);
        Region dark = thumbnail.ground() == Thumbnail.Ground.DARK ? frame : Region.empty();
        for (Mark mark : thumbnail.marks()) {
            if (!mark.hidden()) {
                Region shape = Region.of(mark.outline());
                dark = mark.kind() == Mark.Kind.LAY ? dark.union(shape) : dark.minus(shape);
            }
        }
        return new Design(ratio, dark.intersect(frame));
    }
}
