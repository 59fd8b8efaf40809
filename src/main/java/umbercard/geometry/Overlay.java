package umbercard.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;

/**
 * Fills weighted closed walks by a rule on their winding number: how often they go round a place, counter-clockwise where
 * y runs up, each time counted with the walk's weight. Filling strokes as ink does and joining, cutting and intersecting
 * regions are all this one operation, on a fixed grid.
 */
final class Overlay {
    private static final GeometryFactory FACTORY = new GeometryFactory(Grid.FINE_TO_COARSE.get(0));

    private final List<Coordinate[]> walks = new ArrayList<>();
    private final List<Integer> weights = new ArrayList<>();

    /** Adds a closed walk: the last coordinate equals the first. */
    void add(Coordinate[] ring, int weight) {
        if (ring.length > 3) {
            walks.add(ring);
            weights.add(weight);
        }
    }

    /** Adds all borders of a polygon, so that the winding number is {@code weight} inside and 0 outside. */
    void add(Polygon polygon, int weight) {
        add(polygon.getExteriorRing().getCoordinates(), weight);
        for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
            add(polygon.getInteriorRingN(i).getCoordinates(), weight);
        }
    }

    /**
     * The polygons of all places whose winding number {@code inside} accepts; it must refuse 0. Their interiors are disjoint
     * and connected; outer rings run counter-clockwise (y up), holes clockwise.
     */
    List<Polygon> fill(IntPredicate inside) {
        return fill(inside, Grid.everywhere());
    }

    /**
     * The same where all walks lie on the grid and meet only within {@code meeting}: edges clear of it need no noding. Rounding
     * within can push an edge over a corner beyond it in theory; the sweep then finds no order, and all is noded.
     */
    List<Polygon> fill(IntPredicate inside, Envelope meeting) {
        if (walks.isEmpty()) {
            return List.of();
        }
        Optional<List<Polygon>> quick = fill(inside, meeting, Grid.FINE_TO_COARSE.get(0));
        if (quick.isPresent()) {
            return quick.get();
        }
        for (PrecisionModel grid : Grid.FINE_TO_COARSE) {
            Optional<List<Polygon>> filled = fill(inside, Grid.everywhere(), grid);
            if (filled.isPresent()) {
                return filled.get();
            }
        }
        throw new IllegalStateException("no grid of " + Grid.FINE_TO_COARSE + " could node " + walks.size() + " walks");
    }

    private Optional<List<Polygon>> fill(IntPredicate inside, Envelope meeting, PrecisionModel grid) {
        Arrangement.Builder edges = new Arrangement.Builder(grid, meeting);
        for (int i = 0; i < walks.size(); i++) {
            edges.add(walks.get(i), weights.get(i));
        }
        return edges.noded().border(inside).flatMap(Rings::of).map(Overlay::polygons);
    }

    private static List<Polygon> polygons(List<Ring> outers) {
        List<Polygon> polygons = new ArrayList<>(outers.size());
        for (Ring outer : outers) {
            LinearRing[] holes = outer.holes.stream()
                    .map(hole -> FACTORY.createLinearRing(hole.coordinates()))
                    .toArray(LinearRing[]::new);
            polygons.add(FACTORY.createPolygon(FACTORY.createLinearRing(outer.coordinates()), holes));
        }
        return List.copyOf(polygons);
    }

    static Geometry collected(List<Polygon> polygons) {
        return polygons.size() == 1 ? polygons.get(0) : FACTORY.createMultiPolygon(polygons.toArray(new Polygon[0]));
    }
}
