package umbercard.zones;

import java.util.Comparator;
import java.util.List;
import umbercard.model.Zone;
import umbercard.model.Zone.Plane;

/**
 * What stands before what where zones overlap: near before middle before far; at one distance what stands upright before
 * slopes, these before water, then flat ground, the sky last. Common practice, no source. Zones alike in both stand in the
 * order of the study, later ones before.
 */
public final class Nearer {
    private static final List<Plane> FARTHEST_FIRST =
            List.of(Plane.SKY, Plane.FLAT, Plane.WATER, Plane.SLOPE, Plane.UPRIGHT);

    /** The farthest first; stable for those alike. */
    public static final Comparator<Zone> LAST =
            Comparator.comparing(Zone::distance).thenComparingInt(zone -> FARTHEST_FIRST.indexOf(zone.plane()));

    private Nearer() {}
}
