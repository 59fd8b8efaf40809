package umbercard.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.valid.IsValidOp;

/** Whether a region's pieces are polygons as the Simple Features standard has them (OGC 06-103r4, 6.1.11 and 6.1.14). */
public final class Validity {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private Validity() {}

    /** Fails if the region's rings cross, or its pieces overlap. */
    public static void check(Region region) {
        List<Polygon> polygons = new ArrayList<>();
        for (Region piece : region.pieces()) {
            LinearRing[] rings = piece.outlines().stream().map(Validity::ring).toArray(LinearRing[]::new);
            LinearRing[] holes = List.of(rings).subList(1, rings.length).toArray(new LinearRing[0]);
            polygons.add(FACTORY.createPolygon(rings[0], holes));
        }
        assertThat(new IsValidOp(FACTORY.createMultiPolygon(polygons.toArray(new Polygon[0]))).getValidationError())
                .isNull();
    }

    private static LinearRing ring(Outline outline) {
        List<Coordinate> all = new ArrayList<>();
        outline.nodes()
                .forEach(node -> all.add(new Coordinate(node.at().x(), node.at().y())));
        all.add(all.get(0));
        return FACTORY.createLinearRing(all.toArray(new Coordinate[0]));
    }
}
