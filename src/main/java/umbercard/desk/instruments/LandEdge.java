package umbercard.desk.instruments;

import umbercard.door.Bench;
import umbercard.door.Hand;
import umbercard.door.Instrument;
import umbercard.model.Thumbnail;

/** Draws, moves, tilts and takes away the land edge: where land meets sky. */
public final class LandEdge implements Instrument {
    private static final LevelLine LINE = new LevelLine("land-edge", Thumbnail::landEdge, Thumbnail::withLandEdge);

    @Override
    public int rank() {
        return Ranks.LAND_EDGE;
    }

    @Override
    public String id() {
        return LINE.id();
    }

    @Override
    public String key() {
        return "e";
    }

    @Override
    public Hand pick(Bench bench) {
        return new LevelHand(LINE, bench);
    }
}
