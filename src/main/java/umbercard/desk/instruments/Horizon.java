package umbercard.desk.instruments;

import umbercard.door.Bench;
import umbercard.door.Hand;
import umbercard.door.Instrument;
import umbercard.model.Thumbnail;

/** Draws, moves, tilts and takes away the horizon: eye level. */
public final class Horizon implements Instrument {
    private static final LevelLine LINE = new LevelLine("horizon", Thumbnail::horizon, Thumbnail::withHorizon);

    @Override
    public int rank() {
        return Ranks.HORIZON;
    }

    @Override
    public String id() {
        return LINE.id();
    }

    @Override
    public String key() {
        return "h";
    }

    @Override
    public Hand pick(Bench bench) {
        return new LevelHand(LINE, bench);
    }
}
