package umbercard.geometry;

import org.locationtech.jts.geom.Coordinate;

/** A directed part of a border with the region on its left hand, of one edge or more. */
interface Way {
    Coordinate from();

    /** The next corner after the first. */
    Coordinate ahead();

    /** The last corner but one. */
    Coordinate behind();

    Coordinate to();
}
