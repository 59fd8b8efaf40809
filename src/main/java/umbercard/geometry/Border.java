package umbercard.geometry;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/** The rings of some polygons, apart from each other, with what speeds up work on a part of them. */
final class Border {
    /** One ring of a polygon; its edges are numbered from {@code first}. */
    static final class Circuit {
        final Polygon of;
        final Coordinate[] corners;
        final int first;

        private Circuit(Polygon of, Coordinate[] corners, int first) {
            this.of = of;
            this.corners = corners;
            this.first = first;
        }
    }

    final List<Polygon> polygons;
    final List<Circuit> circuits;
    final Columns columns;

    /** The corners where rings touch. */
    final Set<Coordinate> touches;

    Border(List<Polygon> polygons) {
        this.polygons = polygons;
        List<Circuit> all = new ArrayList<>();
        int edges = 0;
        for (Polygon polygon : polygons) {
            for (int i = -1; i < polygon.getNumInteriorRing(); i++) {
                Coordinate[] corners =
                        (i < 0 ? polygon.getExteriorRing() : polygon.getInteriorRingN(i)).getCoordinates();
                all.add(new Circuit(polygon, corners, edges));
                edges += corners.length - 1;
            }
        }
        circuits = List.copyOf(all);
        columns = Columns.ofRings(
                circuits.stream().map(circuit -> circuit.corners).toList());
        touches = touches(circuits, edges);
    }

    private static Set<Coordinate> touches(List<Circuit> circuits, int edges) {
        Set<Coordinate> seen = new HashSet<>(2 * edges);
        Set<Coordinate> twice = new HashSet<>();
        for (Circuit circuit : circuits) {
            for (int i = 1; i < circuit.corners.length; i++) {
                if (!seen.add(circuit.corners[i])) {
                    twice.add(circuit.corners[i]);
                }
            }
        }
        return twice;
    }
}
