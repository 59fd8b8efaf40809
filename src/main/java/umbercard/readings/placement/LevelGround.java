package umbercard.readings.placement;

import java.util.ArrayList;
import java.util.List;
import umbercard.door.Plan;
import umbercard.geometry.Outline;
import umbercard.geometry.Region;
import umbercard.model.Level;
import umbercard.model.Zone;
import umbercard.model.Zone.Plane;

/**
 * Whether a line lies over water or plain, told by the zones: more than half of the narrow band under the line, where it is
 * within the frame, belongs to zones whose plane is water or flat. Band and half: common practice, no source.
 */
final class LevelGround {
    /** Of the frame's height. */
    private static final double BAND = 0.02;

    private LevelGround() {}

    static boolean under(Level level, Plan plan) {
        List<Outline> ground = new ArrayList<>();
        for (Zone zone : plan.study().zones()) {
            if (zone.plane() == Plane.WATER || zone.plane() == Plane.FLAT) {
                ground.addAll(plan.thumbnail().zoneAreas().getOrDefault(zone.id(), List.of()));
            }
        }
        if (ground.isEmpty()) {
            return false;
        }
        double ratio = plan.design().ratio();
        Region band = Sides.beneath(level, ratio, BAND).intersect(plan.design().frame());
        return Region.of(ground).intersect(band).area() > band.area() / 2;
    }
}
