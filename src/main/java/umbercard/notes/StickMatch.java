package umbercard.notes;

import umbercard.model.Stick;

/**
 * A stick for a color that is wanted.
 *
 * @param likeness how the stick differs from that color
 * @param rank what ranks it: CIEDE2000 with lightness weighted by {@link Trust}
 */
public record StickMatch(Stick stick, Likeness likeness, double rank) {}
