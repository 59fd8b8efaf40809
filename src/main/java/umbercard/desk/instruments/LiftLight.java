package umbercard.desk.instruments;

import umbercard.door.Bench;
import umbercard.door.Hand;
import umbercard.door.Instrument;
import umbercard.model.Mark;

/** Lifts light out of the dark: freehand and by clicks. */
public final class LiftLight implements Instrument {
    static final String ID = "lift-light";

    @Override
    public int rank() {
        return Ranks.LIFT_LIGHT;
    }

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String key() {
        return "l";
    }

    @Override
    public Hand pick(Bench bench) {
        return new OutlineHand(Mark.Kind.LIFT, new MarkMaking(), bench);
    }
}
