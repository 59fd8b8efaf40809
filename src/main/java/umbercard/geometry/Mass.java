package umbercard.geometry;

/**
 * What an eye sees as one part of one value.
 *
 * @param region of one or more pieces
 * @param share of the frame's area, 0..1
 */
public record Mass(Region region, double share) {}
