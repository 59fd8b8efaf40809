package umbercard.cards.faces;

import java.util.List;
import umbercard.door.Drawing;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.geometry.Size;

/** An upright rectangle on a card, in millimeters; the width and height may be zero. */
record Box(double left, double top, double width, double height) {

    double right() {
        return left + width;
    }

    double bottom() {
        return top + height;
    }

    Point corner() {
        return new Point(left, top);
    }

    Size size() {
        return new Size(width, height);
    }

    Outline outline() {
        return Outline.rectangle(left, top, right(), bottom());
    }

    /** Draws a border that lies wholly outside, so that what is inside keeps its area. */
    void border(Drawing drawing) {
        double half = Ink.HAIR / 2;
        Outline around = Outline.rectangle(left - half, top - half, right() + half, bottom() + half);
        drawing.stroke(List.of(around), Ink.HAIR, Ink.HAIRLINE);
    }
}
