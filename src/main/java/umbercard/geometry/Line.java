package umbercard.geometry;

/** A straight line between two places. */
public record Line(Point from, Point to) {}
