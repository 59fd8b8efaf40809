package umbercard.photo;

import umbercard.model.Keyed;
import umbercard.model.Squint;

/** A way to squint, by the key that a study keeps. */
public enum SquintWay implements Keyed {
    /** Everything is blurred alike. */
    GAUSSIAN,
    /** Small shapes melt, large ones keep their edges. */
    KEEPING_EDGES;

    /** The way that a study squints; one that this version does not know is squinted at softly. */
    public static SquintWay of(Squint squint) {
        return Keyed.find(SquintWay.class, squint.way()).orElse(GAUSSIAN);
    }
}
