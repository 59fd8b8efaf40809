package umbercard.desk.instruments;

import umbercard.door.Bench;
import umbercard.door.Hand;
import umbercard.door.Instrument;
import umbercard.model.Mark;

/** Outlines zones for color: freehand and by clicks, or a whole mass with the second button. */
public final class ZoneOutline implements Instrument {
    @Override
    public int rank() {
        return Ranks.ZONE;
    }

    @Override
    public String id() {
        return "zone";
    }

    @Override
    public String key() {
        return "z";
    }

    @Override
    public Hand pick(Bench bench) {
        return new OutlineHand(Mark.Kind.LAY, new ZoneMaking(bench), bench);
    }
}
