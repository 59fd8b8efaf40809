package umbercard.desk.canvas;

import java.awt.Point;
import java.awt.geom.Point2D;

/** Where the frame lies on the notan card, for hands that draw on it. */
public final class FrameOnCard {
    private FrameOnCard() {}

    /** The card's pixel nearest to a place in frame units. On the event thread. */
    public static Point pixel(NotanCard card, double x, double y) {
        Point2D place = card.place().toScreen().transform(new Point2D.Double(x, y), null);
        return new Point((int) Math.round(place.getX()), (int) Math.round(place.getY()));
    }
}
