package umbercard.picture;

import java.util.List;

/**
 * The main colors of a picture inside one zone.
 *
 * @param zone the zone's id
 * @param name what the painter calls it
 * @param share of the picture that the zone takes up, over 0 up to 1
 * @param colors the largest share of the zone first
 */
public record ZoneColors(String zone, String name, double share, List<MainColor> colors) {
    public ZoneColors {
        colors = List.copyOf(colors);
    }
}
