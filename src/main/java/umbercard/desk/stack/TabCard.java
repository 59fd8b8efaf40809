package umbercard.desk.stack;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/**
 * The measures of one tabbed card of the stack, in pixels at 100 %, from the upper left corner of its cell.
 *
 * @param cardWidth of the card without what it is pulled out by
 * @param frame where the little notan lies, for a card that is not pulled out
 * @param height of the whole cell, with the gap below
 */
record TabCard(float cardWidth, Rectangle2D.Float frame, int height) {
    /** Width of the stack. */
    static final int WIDTH = 132;

    /** How far the card that is shown is pulled out to the right. */
    static final float PULLED = 10;

    static final float TAB = 20;
    static final float TAB_LEFT = 8;
    static final float CAPTION = 38;
    private static final float SLANT = 5;
    private static final float TOP = 2;
    private static final float MARGIN = 8;
    private static final float GAP = 10;
    private static final float MOST_WIDE = 80;
    private static final float MOST_HIGH = 60;

    /** The measures for thumbnails {@code ratio} wide and 1 high. */
    static TabCard of(double ratio) {
        float height = (float) Math.min(MOST_HIGH, MOST_WIDE / ratio);
        float width = (float) (height * ratio);
        float card = WIDTH - PULLED - 4;
        float top = TOP + TAB + MARGIN;
        var frame = new Rectangle2D.Float(1 + (card - width) / 2, top, width, height);
        return new TabCard(card, frame, (int) Math.ceil(top + height + CAPTION + GAP));
    }

    /** The card's outline, its tab {@code tabWidth} wide at the foot. */
    Path2D outline(float tabWidth, float pulled) {
        float left = 1 + pulled;
        float right = left + cardWidth;
        float shoulder = TOP + TAB;
        float bottom = height - GAP;
        float tab = left + TAB_LEFT;
        Path2D path = new Path2D.Float();
        path.moveTo(left, shoulder);
        path.lineTo(tab, shoulder);
        path.lineTo(tab + SLANT, TOP);
        path.lineTo(tab + tabWidth - SLANT, TOP);
        path.lineTo(tab + tabWidth, shoulder);
        path.lineTo(right, shoulder);
        path.lineTo(right, bottom);
        path.lineTo(left, bottom);
        path.closePath();
        return path;
    }

    /** The tab alone. */
    Rectangle2D.Float tab(float tabWidth, float pulled) {
        return new Rectangle2D.Float(1 + pulled + TAB_LEFT, TOP, tabWidth, TAB);
    }
}
