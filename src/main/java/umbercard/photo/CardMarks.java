package umbercard.photo;

import java.util.List;
import umbercard.geometry.Point;
import umbercard.geometry.Size;

/**
 * A printed card in a photograph: where it stands in it, and what is known of its print. Corners are in pixels of the
 * picture; all else is in millimeters from the card's upper left corner.
 *
 * @param corners of the card: upper left, upper right, lower right, lower left
 * @param card its size
 * @param patches where sticks were rubbed
 * @param printed bare card and printed grays; one or more
 */
public record CardMarks(List<Point> corners, Size card, List<Patch> patches, List<Printed> printed) {
    public CardMarks {
        corners = List.copyOf(corners);
        patches = List.copyOf(patches);
        printed = List.copyOf(printed);
        if (corners.size() != 4 || printed.isEmpty()) {
            throw new IllegalArgumentException("a card has four corners and something of known value");
        }
    }

    /**
     * Where a stick was rubbed.
     *
     * @param id whose it is
     * @param corner the upper left one
     */
    public record Patch(String id, Point corner, Size size) {}

    /**
     * A piece of bare card or of printed gray.
     *
     * @param corner the upper left one
     * @param value Munsell value, over 0 to 10; the lightest are the card's white
     */
    public record Printed(Point corner, Size size, double value) {
        public Printed {
            if (!(value > 0) || value > 10) {
                throw new IllegalArgumentException("a printed value is over 0 to 10: " + value);
            }
        }
    }
}
