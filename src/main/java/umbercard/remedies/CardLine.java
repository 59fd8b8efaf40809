package umbercard.remedies;

import java.util.Optional;
import umbercard.model.Keyed;
import umbercard.model.Level;
import umbercard.model.Thumbnail;
import umbercard.words.Message;

/** A line across the card that can be raised and lowered, and the picture with it. */
public enum CardLine implements Keyed {
    HORIZON,
    LAND_EDGE;

    /** Where it lies, if it is set. */
    public Optional<Level> on(Thumbnail thumbnail) {
        return this == HORIZON ? thumbnail.horizon() : thumbnail.landEdge();
    }

    /** The one that {@link Thumbnail#horizonOrLandEdge()} gives: the horizon, or where none is set the land edge. */
    public static Optional<CardLine> leading(Thumbnail thumbnail) {
        return thumbnail.horizon().isPresent()
                ? Optional.of(HORIZON)
                : thumbnail.landEdge().map(edge -> LAND_EDGE);
    }

    /** What the painter calls it. */
    public Message words() {
        return Message.of("readings.line." + key());
    }
}
