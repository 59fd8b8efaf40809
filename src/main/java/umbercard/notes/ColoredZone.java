package umbercard.notes;

import java.util.List;
import umbercard.model.Zone;
import umbercard.picture.MainColor;

/**
 * A zone with the reference's main colors in it.
 *
 * @param share of the frame that the zone takes up, over 0 up to 1
 * @param colors the largest share of the zone first
 */
public record ColoredZone(Zone zone, double share, List<MainColor> colors) {
    public ColoredZone {
        colors = List.copyOf(colors);
    }
}
