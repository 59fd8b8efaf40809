package umbercard.remedies;

/** Raises the horizon or the land edge to the nearest named fraction above it. */
public final class RaiseLine extends MoveLine {
    public RaiseLine() {
        super(true);
    }

    @Override
    public String id() {
        return "raise";
    }

    @Override
    public int rank() {
        return 100;
    }
}
