package umbercard.geometry;

import org.locationtech.jts.geom.Coordinate;

/**
 * A side of the frame, which is {@code ratio} wide and 1 high with its upper left corner at the origin; y runs down.
 * Clockwise as seen on the card. Places along it are told by their x on the upper and the lower side, by their y on the
 * others.
 */
public enum FrameSide {
    TOP,
    RIGHT,
    BOTTOM,
    LEFT;

    /**
     * What lies so near to a side, in units, lies on it: a frame's ratio need not be on the grid that regions are held to, and
     * coarser grids may have served. 2⁻²⁰ is a ten-thousandth of a millimeter on a card.
     */
    static final double SLACK = 0x1p-20;

    boolean isLevel() {
        return this == TOP || this == BOTTOM;
    }

    /** In units. */
    public double length(double ratio) {
        return isLevel() ? ratio : 1;
    }

    /** The place on the side. */
    public Point at(double along, double ratio) {
        return switch (this) {
            case TOP -> new Point(along, 0);
            case RIGHT -> new Point(ratio, along);
            case BOTTOM -> new Point(along, 1);
            case LEFT -> new Point(0, along);
        };
    }

    /** How far inside the line through this side a place lies; under zero beyond it. */
    double inside(Coordinate place, double ratio) {
        return switch (this) {
            case TOP -> place.y;
            case RIGHT -> ratio - place.x;
            case BOTTOM -> 1 - place.y;
            case LEFT -> place.x;
        };
    }

    double along(Coordinate place) {
        return isLevel() ? place.x : place.y;
    }

    /** Whether an edge runs along this side, to the slack. */
    boolean holds(Coordinate from, Coordinate to, double ratio) {
        return Math.abs(inside(from, ratio)) <= SLACK && Math.abs(inside(to, ratio)) <= SLACK;
    }

    static boolean anyHolds(Coordinate from, Coordinate to, double ratio) {
        for (FrameSide side : values()) {
            if (side.holds(from, to, ratio)) {
                return true;
            }
        }
        return false;
    }

    /** Whether an edge that runs along this side has a region on its frame's hand: 1, or −1 for the other; 0 for a point. */
    int hand(Coordinate from, Coordinate to) {
        int forward = (int) Math.signum(along(to) - along(from));
        return this == TOP || this == RIGHT ? forward : -forward;
    }
}
