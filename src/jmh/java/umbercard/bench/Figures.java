package umbercard.bench;

import umbercard.geometry.Moments;

/**
 * What the live ledger needs of a drawing.
 *
 * @param share of the frame that is dark, 0..1
 * @param dark its area and moments about the frame's upper left corner
 * @param pieces how many connected pieces of dark there are, as the method counts them
 */
public record Figures(double share, Moments dark, int pieces) {}
