package umbercard.door;

/** A plug-in with a place among its kind: lower ranks come first, equal ranks in the order of their ids. */
public interface Ranked {
    int rank();

    String id();
}
