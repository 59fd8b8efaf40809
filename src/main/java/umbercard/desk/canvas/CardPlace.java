package umbercard.desk.canvas;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import umbercard.geometry.Point;
import umbercard.geometry.Size;

/**
 * Where the card and its frame lie on the screen, in the component's own pixels.
 *
 * @param card the card's rectangle, in the card's true proportions
 * @param frame the frame's rectangle on it; its upper left corner lies between pixels and it is whole pixels high, so that
 *     pictures of it are copied and not stretched
 */
record CardPlace(Rectangle2D card, Rectangle2D frame) {
    /** Pixels that the card's lower edge takes. */
    private static final double EDGE = 2;

    /** Margin between the card's edge and the frame, and the room for the words below, as shares of the card's height. */
    private static final double MARGIN = 0.045;

    private static final double WORDS = 0.09;

    /** The largest card with the largest frame that fits a component, at its top, midway between its sides. */
    static CardPlace in(double width, double height, Size card, double ratio) {
        double scale = Math.min(width / card.width(), (height - EDGE) / card.height());
        double cardWidth = card.width() * scale;
        double cardHeight = card.height() * scale;
        Rectangle2D paper = new Rectangle2D.Double(
                Math.floor((width - cardWidth) / 2), 0, Math.floor(cardWidth), Math.floor(cardHeight));
        double margin = MARGIN * Math.min(cardWidth, cardHeight);
        double words = Math.max(26, WORDS * Math.min(cardWidth, cardHeight));
        double roomWide = Math.max(1, paper.getWidth() - 2 * margin);
        double roomHigh = Math.max(1, paper.getHeight() - margin - words);
        double frameHigh = Math.max(1, Math.floor(Math.min(roomHigh, roomWide / ratio)));
        double frameWide = frameHigh * ratio;
        return new CardPlace(
                paper,
                new Rectangle2D.Double(
                        Math.floor(paper.getX() + (paper.getWidth() - frameWide) / 2),
                        Math.floor(paper.getY() + margin + (roomHigh - frameHigh) / 2),
                        frameWide,
                        frameHigh));
    }

    /** One screen pixel in frame units. */
    double pixel() {
        return 1 / frame.getHeight();
    }

    Point toFrame(double x, double y) {
        return new Point((x - frame.getX()) * pixel(), (y - frame.getY()) * pixel());
    }

    /** Frame units to the component's pixels. */
    AffineTransform toScreen() {
        AffineTransform map = AffineTransform.getTranslateInstance(frame.getX(), frame.getY());
        map.scale(frame.getHeight(), frame.getHeight());
        return map;
    }
}
