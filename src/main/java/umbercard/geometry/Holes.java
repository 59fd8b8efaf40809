package umbercard.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.algorithm.PointLocation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;

/** Gives holes to the outer rings round them, where nothing is known of the rings but their corners. */
final class Holes {
    private final List<LinearRing> outers = new ArrayList<>();
    private final List<LinearRing> holes = new ArrayList<>();

    /** Adds a simple closed ring: an outer one if it runs counter-clockwise where y runs up, else a hole. */
    void add(Coordinate[] ring) {
        (Orientation.isCCW(ring) ? outers : holes).add(Overlay.FACTORY.createLinearRing(ring));
    }

    /** Each outer ring with its holes; empty if a hole lies in none. */
    Optional<List<Polygon>> polygons() {
        List<Polygon> round = new ArrayList<>(
                outers.stream().map(Overlay.FACTORY::createPolygon).toList());
        round.sort(Comparator.comparingDouble(Polygon::getArea));
        List<List<LinearRing>> within = new ArrayList<>();
        round.forEach(outer -> within.add(new ArrayList<>()));
        for (LinearRing hole : holes) {
            Optional<List<LinearRing>> place = place(hole, round, within);
            if (place.isEmpty()) {
                return Optional.empty();
            }
            place.get().add(hole);
        }
        List<Polygon> polygons = new ArrayList<>();
        for (int i = 0; i < round.size(); i++) {
            within.get(i).sort(Comparator.comparing(LinearRing::getCoordinate));
            LinearRing[] own = within.get(i).toArray(new LinearRing[0]);
            polygons.add(
                    own.length == 0
                            ? round.get(i)
                            : Overlay.FACTORY.createPolygon(round.get(i).getExteriorRing(), own));
        }
        return Optional.of(polygons);
    }

    /** The holes of the smallest outer ring round one. */
    private static Optional<List<LinearRing>> place(
            LinearRing hole, List<Polygon> round, List<List<LinearRing>> within) {
        for (int i = 0; i < round.size(); i++) {
            if (round.get(i).getEnvelopeInternal().covers(hole.getEnvelopeInternal())
                    && (round.size() == 1 || isWithin(hole, round.get(i).getExteriorRing()))) {
                return Optional.of(within.get(i));
            }
        }
        return Optional.empty();
    }

    /** By the first corner of the hole that is not on the ring. */
    private static boolean isWithin(LinearRing hole, LinearRing ring) {
        for (Coordinate corner : hole.getCoordinates()) {
            int location = PointLocation.locateInRing(corner, ring.getCoordinates());
            if (location != Location.BOUNDARY) {
                return location == Location.INTERIOR;
            }
        }
        return false;
    }
}
