package umbercard.notan;

/** How many dark and how many light masses there are. */
public record MassCounts(int dark, int light) {}
