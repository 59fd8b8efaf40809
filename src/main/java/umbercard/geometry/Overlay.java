package umbercard.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntPredicate;
import java.util.function.ObjIntConsumer;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.noding.Noder;
import org.locationtech.jts.noding.snapround.SnapRoundingNoder;

/**
 * Fills weighted closed walks by a rule on their winding number: how often they go round a place, counter-clockwise where
 * y runs up, each time counted with the walk's weight. Filling strokes as ink does and joining, cutting and intersecting
 * regions are all this one operation, on a fixed grid.
 */
final class Overlay {
    static final GeometryFactory FACTORY = new GeometryFactory(Grid.FINE_TO_COARSE.get(0));

    private final Function<PrecisionModel, Noder> noders;
    private final List<Coordinate[]> rings = new ArrayList<>();
    private final List<Integer> weights = new ArrayList<>();

    Overlay() {
        this(SnapRoundingNoder::new);
    }

    /** @param noders cuts edges where they meet on a grid */
    Overlay(Function<PrecisionModel, Noder> noders) {
        this.noders = noders;
    }

    /** Adds a closed walk: the last coordinate equals the first. */
    void add(Coordinate[] ring, int weight) {
        if (ring.length > 3) {
            rings.add(ring);
            weights.add(weight);
        }
    }

    /** Adds a polygon, so that the winding number is {@code weight} inside it. */
    void add(Polygon polygon, int weight) {
        add(polygon.getExteriorRing().getCoordinates(), weight);
        for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
            add(polygon.getInteriorRingN(i).getCoordinates(), weight);
        }
    }

    /**
     * The polygons of all places whose winding number {@code inside} accepts; it must refuse 0. Their interiors are disjoint
     * and connected; outer rings run counter-clockwise (y up), holes clockwise. Never fails: where the fine grid does not serve,
     * a coarser one does if a count on hatch lines agrees with it, else terraces do.
     */
    List<Polygon> fill(IntPredicate inside) {
        if (rings.isEmpty()) {
            return List.of();
        }
        for (PrecisionModel grid : Grid.FINE_TO_COARSE) {
            Arrangement.Builder edges = new Arrangement.Builder(noders.apply(grid));
            eachTo(edges::add);
            Optional<List<Polygon>> filled = edges.noded().flatMap(noded -> filled(noded, inside));
            boolean trouble = !grid.equals(Grid.FINE_TO_COARSE.get(0));
            if (filled.isPresent() && (!trouble || isRight(filled.get(), inside))) {
                return filled.get();
            }
        }
        return terraced(inside);
    }

    /** Whether polygons have the area that hatch lines measure. */
    private boolean isRight(List<Polygon> polygons, IntPredicate inside) {
        FillCheck check = new FillCheck(rings);
        eachTo(check::add);
        return check.agrees(polygons, inside);
    }

    private void eachTo(ObjIntConsumer<Coordinate[]> taker) {
        for (int i = 0; i < rings.size(); i++) {
            taker.accept(rings.get(i), weights.get(i));
        }
    }

    private List<Polygon> terraced(IntPredicate inside) {
        Terraces terraces = new Terraces();
        eachTo(terraces::add);
        Arrangement level = new Arrangement(terraces.edges(inside));
        return filled(level, winding -> winding != 0).orElseThrow();
    }

    private static Optional<List<Polygon>> filled(Arrangement edges, IntPredicate inside) {
        return edges.border(inside).flatMap(Rings::of).map(Overlay::polygons);
    }

    /** The polygon with every x taken from {@code sum}; its rings run as before. */
    static Polygon mirrored(Polygon polygon, double sum) {
        LinearRing[] holes = new LinearRing[polygon.getNumInteriorRing()];
        Arrays.setAll(holes, i -> mirrored(polygon.getInteriorRingN(i), sum));
        Arrays.sort(holes, Comparator.comparing(LinearRing::getCoordinate));
        return FACTORY.createPolygon(mirrored(polygon.getExteriorRing(), sum), holes);
    }

    private static LinearRing mirrored(LinearRing ring, double sum) {
        List<Coordinate> corners = new ArrayList<>();
        Coordinate[] all = ring.getCoordinates();
        for (int i = all.length - 1; i > 0; i--) {
            corners.add(new Coordinate(sum - all[i].x, all[i].y));
        }
        return FACTORY.createLinearRing(Ring.closed(corners, corner -> true));
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
