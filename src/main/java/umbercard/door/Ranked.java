package umbercard.door;

import java.util.Comparator;

/** A plug-in with a place among its kind: lower ranks come first, equal ranks in the order of their ids. */
public interface Ranked {
    /** The order that plug-ins of one kind stand in. */
    Comparator<Ranked> ORDER = Comparator.comparingInt(Ranked::rank).thenComparing(Ranked::id);

    int rank();

    String id();
}
