package umbercard.notes.turned;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import umbercard.geometry.Node;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.geometry.Region;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;
import umbercard.zones.ZoneMap;
import umbercard.zones.ZonePair;
import umbercard.zones.ZonePlace;

/**
 * What hides the sky from still water. The sky is as far off as can be and turns over about the horizon h; what stands at the
 * water's edge turns over about the waterline w below it. A top at the height y is seen in the water at 2w − y, where the sky
 * from 2h − (2w − y) would be: so it hides the sky up to 2(w − h) higher than it does in the picture, and all between. Derived
 * from the law of reflection for a level mirror and a level line of sight; the same rule of equal heights is in {@code
 * light_reflection.csv} of the tests.
 */
final class Mirror {
    private final double lift;
    private final ZoneMap zones;

    Mirror(Thumbnail thumbnail, ZoneMap zones) {
        this.zones = zones;
        lift = thumbnail
                .waterline()
                .flatMap(water -> thumbnail.horizon().map(horizon -> 2 * (water.y() - horizon.y())))
                .filter(higher -> higher > 0)
                .orElse(0.0);
    }

    /** What hides part of a sky. */
    record Hider(Zone zone, Region region) {}

    /** All that can hide a sky zone from the water, what stands in the picture before it first. */
    List<Hider> before(ZonePlace sky) {
        List<Hider> hiders = new ArrayList<>();
        List<ZonePlace> order = zones.farthestFirst();
        order.subList(order.indexOf(sky) + 1, order.size()).stream()
                .map(place -> new Hider(place.zone(), place.drawn()))
                .forEach(hiders::add);
        if (lift > 0) {
            zones.touching().stream()
                    .flatMap(pair -> atTheWater(pair).stream())
                    .map(place -> new Hider(place.zone(), swept(place.drawn())))
                    .forEach(hiders::add);
        }
        return List.copyOf(hiders);
    }

    private static Optional<ZonePlace> atTheWater(ZonePair pair) {
        boolean farther = pair.farther().zone().plane() == Zone.Plane.WATER;
        boolean nearer = pair.nearer().zone().plane() == Zone.Plane.WATER;
        ZonePlace other = farther ? pair.nearer() : pair.farther();
        return farther != nearer && other.zone().plane() == Zone.Plane.UPRIGHT ? Optional.of(other) : Optional.empty();
    }

    /** All that a region passes over on its way up by the lift. */
    private Region swept(Region region) {
        List<Outline> sides =
                region.outlines().stream().flatMap(ring -> sides(ring).stream()).toList();
        Region raised = Region.of(region.outlines().stream()
                .map(ring -> ring.mapped(this::raised))
                .toList());
        return region.union(raised).union(Region.of(sides));
    }

    /** The parallelogram that each side of a ring passes over, all wound one way so that none takes away from another. */
    private List<Outline> sides(Outline ring) {
        List<Node> nodes = ring.nodes();
        List<Outline> sides = new ArrayList<>();
        for (int i = 0; i < nodes.size(); i++) {
            Point one = nodes.get(i).at();
            Point other = nodes.get((i + 1) % nodes.size()).at();
            if (one.x() != other.x()) {
                Point left = one.x() < other.x() ? one : other;
                Point right = one.x() < other.x() ? other : one;
                sides.add(Outline.polygon(List.of(left, right, raised(right), raised(left))));
            }
        }
        return sides;
    }

    private Point raised(Point point) {
        return new Point(point.x(), point.y() - lift);
    }
}
