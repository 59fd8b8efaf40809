package umbercard.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.OverlayNG;

/** DRAFT, replaced by the geometry work. */
public final class Region {
    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final PrecisionModel GRID = new PrecisionModel(1e9);
    private static final Region EMPTY = new Region(FACTORY.createPolygon());

    private final Geometry geometry;

    private Region(Geometry geometry) {
        this.geometry = geometry;
    }

    public static Region empty() {
        return EMPTY;
    }

    public static Region rectangle(double left, double top, double right, double bottom) {
        return of(Outline.rectangle(left, top, right, bottom));
    }

    public static Region of(Outline outline) {
        return of(List.of(outline));
    }

    public static Region of(Collection<Outline> outlines) {
        Region all = EMPTY;
        for (Outline outline : outlines) {
            List<Coordinate> ring = new ArrayList<>();
            for (Cubic segment : outline.segments()) {
                int steps = segment.isLine() ? 1 : 32;
                for (int i = 0; i < steps; i++) {
                    Point p = segment.at((double) i / steps);
                    ring.add(new Coordinate(p.x(), p.y()));
                }
            }
            if (ring.size() < 3) {
                continue;
            }
            ring.add(ring.get(0).copy());
            Geometry fixed = org.locationtech.jts.geom.util.GeometryFixer.fix(
                    FACTORY.createPolygon(ring.toArray(new Coordinate[0])));
            all = all.union(new Region(fixed));
        }
        return all;
    }

    public Region union(Region other) {
        return overlay(other, OverlayNG.UNION);
    }

    public Region minus(Region other) {
        return overlay(other, OverlayNG.DIFFERENCE);
    }

    public Region intersect(Region other) {
        return overlay(other, OverlayNG.INTERSECTION);
    }

    private Region overlay(Region other, int operation) {
        return new Region(OverlayNG.overlay(geometry, other.geometry, operation, GRID));
    }

    public boolean isEmpty() {
        return geometry.isEmpty();
    }

    public double area() {
        return geometry.getArea();
    }

    public boolean contains(Point point) {
        return new IndexedPointInAreaLocator(geometry).locate(new Coordinate(point.x(), point.y()))
                != Location.EXTERIOR;
    }

    public List<Region> pieces() {
        List<Region> pieces = new ArrayList<>();
        for (int i = 0; i < geometry.getNumGeometries(); i++) {
            if (geometry.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
                pieces.add(new Region(polygon));
            }
        }
        return pieces;
    }

    public List<Outline> outlines() {
        List<Outline> rings = new ArrayList<>();
        for (Region piece : pieces()) {
            Polygon polygon = (Polygon) piece.geometry;
            rings.add(outline(polygon.getExteriorRing()));
            for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
                rings.add(outline(polygon.getInteriorRingN(i)));
            }
        }
        return rings;
    }

    private static Outline outline(LinearRing ring) {
        Coordinate[] all = ring.getCoordinates();
        return Outline.polygon(Arrays.stream(all, 0, all.length - 1)
                .map(c -> new Point(c.x, c.y))
                .toList());
    }
}
