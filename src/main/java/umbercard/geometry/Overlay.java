package umbercard.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntPredicate;
import java.util.function.ObjIntConsumer;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
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
    private static final GeometryFactory FACTORY = new GeometryFactory(Grid.FINE_TO_COARSE.get(0));

    private final Function<PrecisionModel, Noder> noders;
    private final Walks mine = new Walks();
    private final Walks others = new Walks();

    /** Closed walks, and the weight of each. */
    private static final class Walks {
        private final List<Coordinate[]> rings = new ArrayList<>();
        private final List<Integer> weights = new ArrayList<>();

        void add(Coordinate[] ring, int weight) {
            if (ring.length > 3) {
                rings.add(ring);
                weights.add(weight);
            }
        }

        void eachTo(ObjIntConsumer<Coordinate[]> taker) {
            for (int i = 0; i < rings.size(); i++) {
                taker.accept(rings.get(i), weights.get(i));
            }
        }

        /** So that the winding number is {@code weight} inside the polygon and 0 outside. */
        void add(Polygon polygon, int weight) {
            add(polygon.getExteriorRing().getCoordinates(), weight);
            for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
                add(polygon.getInteriorRingN(i).getCoordinates(), weight);
            }
        }
    }

    Overlay() {
        this(SnapRoundingNoder::new);
    }

    /** @param noders cuts edges where they meet on a grid */
    Overlay(Function<PrecisionModel, Noder> noders) {
        this.noders = noders;
    }

    /** Adds a closed walk: the last coordinate equals the first. */
    void add(Coordinate[] ring, int weight) {
        mine.add(ring, weight);
    }

    /** Adds a polygon of one region, on the grid and apart from that region's others. */
    void addMine(Polygon polygon, int weight) {
        mine.add(polygon, weight);
    }

    /** Adds a polygon of another region, on the grid and apart from that region's others. */
    void addOther(Polygon polygon, int weight) {
        others.add(polygon, weight);
    }

    /**
     * The polygons of all places whose winding number {@code inside} accepts; it must refuse 0. Their interiors are disjoint
     * and connected; outer rings run counter-clockwise (y up), holes clockwise. Never fails: where no grid serves, terraces do.
     */
    List<Polygon> fill(IntPredicate inside) {
        if (mine.rings.isEmpty() && others.rings.isEmpty()) {
            return List.of();
        }
        for (PrecisionModel grid : Grid.FINE_TO_COARSE) {
            Arrangement.Builder edges = new Arrangement.Builder(noders.apply(grid));
            addAll(edges, mine);
            addAll(edges, others);
            Optional<List<Polygon>> filled = edges.noded().flatMap(noded -> filled(noded, inside));
            if (filled.isPresent()) {
                return filled.get();
            }
        }
        return terraced(inside);
    }

    /**
     * The same where all walks are borders of two regions that meet only within {@code meeting}: only edges that come near one
     * of the other region are noded. Rounding those can push one over a corner elsewhere in theory; the sweep then finds no
     * order, and all is noded.
     */
    List<Polygon> fill(IntPredicate inside, Envelope meeting) {
        PrecisionModel grid = Grid.FINE_TO_COARSE.get(0);
        Arrangement.Builder edges = new Arrangement.Builder(noders.apply(grid));
        addNear(edges, mine, others, meeting, 4 / grid.getScale());
        addNear(edges, others, mine, meeting, 4 / grid.getScale());
        return edges.noded().flatMap(noded -> filled(noded, inside)).orElseGet(() -> fill(inside));
    }

    private List<Polygon> terraced(IntPredicate inside) {
        Terraces terraces = new Terraces();
        mine.eachTo(terraces::add);
        others.eachTo(terraces::add);
        Arrangement level = new Arrangement(terraces.edges(inside));
        return filled(level, winding -> winding != 0).orElseThrow();
    }

    private static void addAll(Arrangement.Builder edges, Walks walks) {
        walks.eachTo(edges::add);
    }

    private static void addNear(Arrangement.Builder edges, Walks walks, Walks others, Envelope meeting, double slack) {
        Nearness nearness = new Nearness(meeting, slack);
        others.rings.forEach(nearness::mark);
        for (int i = 0; i < walks.rings.size(); i++) {
            edges.add(walks.rings.get(i), walks.weights.get(i), nearness);
        }
    }

    private static Optional<List<Polygon>> filled(Arrangement edges, IntPredicate inside) {
        return edges.border(inside).flatMap(Rings::of).map(Overlay::polygons);
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
