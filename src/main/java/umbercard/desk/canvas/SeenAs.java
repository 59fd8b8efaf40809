package umbercard.desk.canvas;

import umbercard.model.Keyed;

/** How the reference is looked at: as photographed, in gray, or in a few values. */
public enum SeenAs implements Keyed {
    COLOR(0),
    GRAY(0),
    TWO_VALUES(2),
    THREE_VALUES(3),
    FOUR_VALUES(4),
    FIVE_VALUES(5);

    private final int steps;

    SeenAs(int steps) {
        this.steps = steps;
    }

    /** In how many values; 0 where they are not counted. */
    int steps() {
        return steps;
    }

    /** Whether it is parted at the split. */
    public boolean splits() {
        return steps > 0;
    }
}
