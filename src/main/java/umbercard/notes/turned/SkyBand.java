package umbercard.notes.turned;

import java.util.Optional;
import umbercard.model.ColorNote;
import umbercard.model.Zone;

/**
 * The part of a sky that one note is laid in.
 *
 * @param left the share of it that the water can mirror, 0..1
 * @param hiddenBy the zone that hides most of it, if any does
 */
public record SkyBand(ColorNote note, Zone zone, double left, Optional<Zone> hiddenBy) {
    /** A band with less than this left is not turned over: common practice, no source. */
    public static final double LEAST = 0.1;

    /** Whether enough of it is left to be seen in the water. */
    public boolean isSeen() {
        return left >= LEAST;
    }
}
