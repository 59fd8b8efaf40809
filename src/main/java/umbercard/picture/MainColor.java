package umbercard.picture;

import umbercard.color.Lab;

/**
 * One of the few colors that a part of a picture is mostly made of.
 *
 * @param color the mean of its cluster in L*a*b*
 * @param share of all that was looked at, over 0 up to 1
 */
public record MainColor(Lab color, double share) {}
