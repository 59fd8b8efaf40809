package umbercard.notes;

import java.util.List;
import umbercard.picture.MainColor;

/**
 * The sticks for one of a zone's main colors, the best first.
 *
 * @param zone the zone's id
 * @param withinValue whether the sticks are within value by {@link Trust}; if not, there is none that is, and these come
 *     nearest in value
 */
public record ColorMatches(String zone, MainColor color, boolean withinValue, List<StickMatch> sticks) {
    public ColorMatches {
        sticks = List.copyOf(sticks);
    }
}
