package umbercard.desk.instruments;

import umbercard.door.Bench;
import umbercard.door.Hand;
import umbercard.door.Instrument;
import umbercard.model.Mark;

/** Lays dark: freehand and by clicks. */
public final class LayDark implements Instrument {
    static final String ID = "lay-dark";

    @Override
    public int rank() {
        return Ranks.LAY_DARK;
    }

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String key() {
        return "d";
    }

    @Override
    public Hand pick(Bench bench) {
        return new OutlineHand(Mark.Kind.LAY, new MarkMaking(), bench);
    }
}
