package umbercard.zones;

import umbercard.model.LostEdge;

/** Two zones that have to do with each other; {@code nearer} stands before {@code farther} by {@link Nearer}. */
public record ZonePair(ZonePlace farther, ZonePlace nearer) {

    /** Their common edge, as a study keeps those that are to be lost. */
    public LostEdge edge() {
        return new LostEdge(farther.zone().id(), nearer.zone().id());
    }
}
