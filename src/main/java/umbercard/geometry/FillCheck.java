package umbercard.geometry;

import java.util.List;
import java.util.function.IntPredicate;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/**
 * Measures what walks fill by winding numbers on hatch lines, to check an overlay that met with trouble. Nothing is noded,
 * so nothing can fail.
 */
final class FillCheck {
    private static final int DENSITY = 4000;

    /** What the areas may differ by, as a share of the box round all walks: over the error of measuring on lines. */
    private static final double OFF = 1e-5;

    private final Envelope box = new Envelope();
    private final Hatch hatch = new Hatch(1, DENSITY);
    private final LineCrossings crossings = new LineCrossings();

    /** @param walks all that will be added */
    FillCheck(List<Coordinate[]> walks) {
        for (Coordinate[] walk : walks) {
            for (Coordinate corner : walk) {
                box.expandToInclude(corner);
            }
        }
    }

    void add(Coordinate[] walk, int weight) {
        Coordinate[] onSquare = new Coordinate[walk.length];
        for (int i = 0; i < walk.length; i++) {
            int from = weight < 0 ? walk.length - 1 - i : i;
            onSquare[i] = new Coordinate(
                    share(walk[from].x - box.getMinX(), box.getWidth()),
                    share(walk[from].y - box.getMinY(), box.getHeight()));
        }
        for (int i = 0; i < Math.abs(weight); i++) {
            hatch.cross(onSquare, crossings);
        }
    }

    private static double share(double length, double whole) {
        return whole == 0 ? 0 : length / whole;
    }

    /** Whether polygons have the area of all places whose winding number {@code inside} accepts. */
    boolean agrees(List<Polygon> polygons, IntPredicate inside) {
        double area = polygons.stream().mapToDouble(Polygon::getArea).sum();
        return Math.abs(area - box.getArea() * hatch.area(crossings, inside)) <= OFF * box.getArea();
    }
}
