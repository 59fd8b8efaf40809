package umbercard.remedies;

/** Lowers the horizon or the land edge to the nearest named fraction below it. */
public final class LowerLine extends MoveLine {
    public LowerLine() {
        super(false);
    }

    @Override
    public String id() {
        return "lower";
    }

    @Override
    public int rank() {
        return 110;
    }
}
