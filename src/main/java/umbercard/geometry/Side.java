package umbercard.geometry;

/** A side of a frame. */
public enum Side {
    TOP,
    RIGHT,
    BOTTOM,
    LEFT;

    /** Whether it runs across rather than down. */
    public boolean isLevel() {
        return this == TOP || this == BOTTOM;
    }
}
