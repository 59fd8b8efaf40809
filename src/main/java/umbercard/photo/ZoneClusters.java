package umbercard.photo;

import java.util.List;
import java.util.Optional;
import umbercard.geometry.Outline;
import umbercard.kernel.EventThread;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;
import umbercard.picture.Picture;
import umbercard.picture.ZoneColors;

/**
 * The main colors of the reference inside each zone of a thumbnail: {@value #LEAST} to {@value #MOST} of them, as many as
 * differ by {@value #APART} or more (CIEDE2000) and take up {@value #SHARE} of the zone or more, so that what an edge blurs
 * together is no color of its own. Both figures are common practice, no source. The same on every run and every machine; see {@link MainColors}.
 */
public final class ZoneClusters {
    private static final int LEAST = 2;
    private static final int MOST = 4;
    private static final double APART = 6;
    private static final double SHARE = 0.02;

    private ZoneClusters() {}

    /**
     * The colors of the zones, in the study's order of zones. A zone that the thumbnail does not place, or that lies outside
     * the frame, is left out.
     *
     * @param framed the reference in the thumbnail's frame
     * @throws IllegalStateException on the event thread
     */
    public static List<ZoneColors> of(Picture framed, List<Zone> zones, Thumbnail thumbnail) {
        EventThread.refuse("finding the colors of zones");
        return zones.parallelStream()
                .flatMap(zone -> of(framed, zone, thumbnail.zoneAreas().getOrDefault(zone.id(), List.of())).stream())
                .toList();
    }

    private static Optional<ZoneColors> of(Picture framed, Zone zone, List<Outline> area) {
        boolean[] inside = ZoneMask.of(area, framed.width(), framed.height());
        int count = 0;
        for (boolean one : inside) {
            count += one ? 1 : 0;
        }
        if (count == 0) {
            return Optional.empty();
        }
        double share = (double) count / inside.length;
        return Optional.of(new ZoneColors(
                zone.id(), zone.name(), share, MainColors.apart(framed, inside, LEAST, MOST, APART, SHARE)));
    }
}
