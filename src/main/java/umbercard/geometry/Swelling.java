package umbercard.geometry;

import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/**
 * Swells what polygons cover by a distance, or shrinks it: all places nearer than that to it, or further than that from what
 * it leaves. Round corners are drawn with {@value #CORNERS} chords a quarter turn, so they fall short by up to 0.5 % of
 * the distance; dents shallower than {@link #DENTS} of it are passed over. Between straight sides it is exact.
 */
public final class Swelling {
    private static final int CORNERS = 8;
    private static final double DENTS = 0.005;

    /** A plane without a grid: the library rounds to one before it has cut the edges, and then fails more often. */
    private static final GeometryFactory PLANE = new GeometryFactory();

    private Swelling() {}

    /**
     * All places nearer than a distance to a region.
     *
     * @param by in units, 0 or more
     * @return empty if the library fails
     */
    public static Optional<Region> of(Region region, double by) {
        return swelled(prepared(region), by).map(Region::covered);
    }

    /**
     * A region with its gaps and bays narrower than a width filled: the closing of Serra 1982, "Image analysis and mathematical
     * morphology", with a disc of that diameter. It covers the region.
     *
     * @param width in units, 0 or more
     * @return empty if the library fails
     */
    public static Optional<Region> closed(Region region, double width) {
        return swelled(prepared(region), width / 2)
                .flatMap(wide -> swelled(wide, -width / 2))
                .map(Region::covered)
                .map(region::union);
    }

    /** Polygons ready to be swelled. */
    static Geometry prepared(Region region) {
        return PLANE.createGeometry(region.isEmpty() ? Overlay.FACTORY.createPolygon() : region.geometry());
    }

    /**
     * What polygons cover, swelled.
     *
     * @param by in units; under zero to shrink
     * @return empty if the library fails, or if the area shows that it is wrong
     */
    static Optional<Geometry> swelled(Geometry polygons, double by) {
        BufferParameters round = new BufferParameters(CORNERS);
        round.setSimplifyFactor(DENTS);
        try {
            Geometry swelled = BufferOp.bufferOp(polygons, by, round);
            return isPlausible(polygons, swelled, by) ? Optional.of(swelled) : Optional.empty();
        } catch (RuntimeException failed) {
            // The library has several for edges that it could not cut or put together.
            return Optional.empty();
        }
    }

    /** By Steiner's bound (1840): a swelled figure gains at most its border times the distance, and a disc a piece. */
    private static boolean isPlausible(Geometry before, Geometry after, double by) {
        double grown = after.getArea() - before.getArea();
        double dents = DENTS * Math.abs(by) * before.getLength();
        if (by < 0) {
            return grown <= dents;
        }
        double most = before.getLength() * by + before.getNumGeometries() * Math.PI * by * by;
        return grown >= -dents && grown <= most + dents && isPolygonal(after);
    }

    private static boolean isPolygonal(Geometry geometry) {
        for (int i = 0; i < geometry.getNumGeometries(); i++) {
            if (!(geometry.getGeometryN(i) instanceof Polygon)) {
                return false;
            }
        }
        return true;
    }
}
