package umbercard.desk.instruments;

/** The order of the instruments: that of the job, with room between for those of other makers. */
final class Ranks {
    static final int LAY_DARK = 100;
    static final int LIFT_LIGHT = 200;
    static final int HORIZON = 400;
    static final int LAND_EDGE = 500;
    static final int ZONE = 900;

    private Ranks() {}
}
