package umbercard.desk.canvas;

import java.awt.Component;
import java.awt.Container;
import java.awt.geom.Point2D;
import java.util.Optional;
import umbercard.geometry.Point;

/** Finds the notan card and places on it; on the event thread. */
public final class CardPixels {
    private CardPixels() {}

    /** The notan card in a window. */
    public static NotanCard in(Container window) {
        return find(window).orElseThrow();
    }

    private static Optional<NotanCard> find(Container within) {
        for (Component child : within.getComponents()) {
            if (child instanceof NotanCard card) {
                return Optional.of(card);
            }
            Optional<NotanCard> deeper = child instanceof Container inner ? find(inner) : Optional.empty();
            if (deeper.isPresent()) {
                return deeper;
            }
        }
        return Optional.empty();
    }

    /** The card's pixel at a place in frame units. */
    public static Point2D of(NotanCard card, Point at) {
        return card.place().toScreen().transform(new Point2D.Double(at.x(), at.y()), null);
    }
}
