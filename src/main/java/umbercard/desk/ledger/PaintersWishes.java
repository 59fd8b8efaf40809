package umbercard.desk.ledger;

import umbercard.readings.Wishes;
import umbercard.store.Preferred;

/** What the painter wishes of the readings, as it is kept on this machine. */
public final class PaintersWishes {
    private PaintersWishes() {}

    /** As they are kept now. */
    public static Wishes now() {
        return new Wishes(Preferred.limits(), Preferred.silenced());
    }

    static void keep(Wishes wishes) {
        Preferred.keepLimits(wishes.limits());
        Preferred.keepSilenced(wishes.silenced());
    }
}
