package umbercard.door;

/** A threshold: its default, its unit, and the range it may be set to. */
public record Limit(double value, String unit, double least, double most) {}
