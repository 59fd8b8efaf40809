package umbercard.notan;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;

/**
 * A drawing that tests fold, and what is known of it.
 *
 * @param name its file's, without the ending
 * @param origin lines that say where it came from
 * @param ratio the frame's width; its height is 1
 * @param share the share of the frame that is dark, where it is known, to {@code within}
 * @param pieces the number of pieces of dark, where it is known
 */
record Drawing(
        String name,
        List<String> origin,
        double ratio,
        Thumbnail thumbnail,
        OptionalDouble share,
        double within,
        OptionalInt pieces) {

    static Drawing of(String name, double ratio, Thumbnail thumbnail) {
        return new Drawing(name, List.of(), ratio, thumbnail, OptionalDouble.empty(), 0, OptionalInt.empty());
    }

    Drawing from(String newName, List<String> newOrigin) {
        return new Drawing(newName, List.copyOf(newOrigin), ratio, thumbnail, share, within, pieces);
    }

    /** Another drawing on the same frame, of which nothing is known. */
    Drawing drawn(Thumbnail other) {
        return new Drawing(name, origin, ratio, other, OptionalDouble.empty(), 0, OptionalInt.empty());
    }

    Drawing marked(List<Mark> marks) {
        return drawn(thumbnail.withMarks(marks));
    }

    List<Mark> marks() {
        return thumbnail.marks();
    }

    boolean isDarkGround() {
        return thumbnail.ground() == Thumbnail.Ground.DARK;
    }

    Design fold() {
        return Fold.of(thumbnail, ratio);
    }

    /** For the names of tests. */
    @Override
    public String toString() {
        return name;
    }
}
