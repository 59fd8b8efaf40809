package umbercard.door;

import java.util.List;
import umbercard.color.Lab;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.geometry.Size;
import umbercard.picture.Picture;

/** One side of a card to draw on: millimeters, y down from the upper left corner. Each writer brings its own. */
public interface Drawing {
    /**
     * Draws {@code inside} as a named part.
     *
     * @param id unique on the side
     * @param title for screen readers
     */
    void group(String id, String title, Runnable inside);

    /** Fills the outlines together by the even-odd rule. */
    void fill(List<Outline> evenOdd, Lab color);

    /**
     * Fills an upright rectangle that is a named part by itself.
     *
     * @param id unique on the side
     * @param title for screen readers
     * @param corner the upper left one
     */
    default void rectangle(String id, String title, Point corner, Size size, Lab color) {
        Outline outline =
                Outline.rectangle(corner.x(), corner.y(), corner.x() + size.width(), corner.y() + size.height());
        group(id, title, () -> fill(List.of(outline), color));
    }

    /** Draws the outlines' edges, {@code width} wide. */
    void stroke(List<Outline> outlines, double width, Lab color);

    /** Draws a straight-sided line, {@code width} wide, cut off square at its ends. */
    void line(List<Point> points, double width, Lab color);

    /** Sets words from their left end, at a size in points. */
    void text(String words, Point baseline, double points, Weight weight, Lab color);

    /** Places a picture with its upper left corner at {@code corner}, {@code width} wide. */
    void picture(Picture picture, Point corner, double width);

    /** How heavy words are set. */
    enum Weight {
        REGULAR,
        MEDIUM
    }
}
