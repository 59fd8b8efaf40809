package umbercard.geometry;

import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/** A region that is not empty, with an index of its edges, made when first needed, to find what lies nearest to it. */
final class Facets {
    private final Region region;
    private final Geometry geometry;

    @Nullable
    private IndexedFacetDistance index;

    Facets(Region region) {
        this.region = region;
        geometry = region.geometry();
    }

    Envelope bounds() {
        return geometry.getEnvelopeInternal();
    }

    /** The nearest places, the first on this region. */
    Gap gapTo(Facets other) {
        if (geometry.getNumPoints() < other.geometry.getNumPoints()) {
            return other.gapTo(this).reversed();
        }
        if (bounds().intersects(other.bounds())) {
            Point shared = shared(region, other.geometry);
            shared = shared != null ? shared : shared(other.region, geometry);
            if (shared != null) {
                return new Gap(shared, shared);
            }
        }
        Coordinate[] nearest = index().nearestPoints(other.geometry);
        return new Gap(new Point(nearest[0].x, nearest[0].y), new Point(nearest[1].x, nearest[1].y));
    }

    private IndexedFacetDistance index() {
        IndexedFacetDistance known = index;
        if (known == null) {
            known = new IndexedFacetDistance(geometry);
            index = known;
        }
        return known;
    }

    /** A corner of one of the pieces that lies in a region; if borders do not meet, one corner of each piece tells. */
    @Nullable
    private static Point shared(Region region, Geometry pieces) {
        for (int i = 0; i < pieces.getNumGeometries(); i++) {
            if (pieces.getGeometryN(i) instanceof Polygon piece) {
                Coordinate corner = piece.getExteriorRing().getCoordinateN(0);
                if (region.bounds().contains(corner) && region.contains(new Point(corner.x, corner.y))) {
                    return new Point(corner.x, corner.y);
                }
            }
        }
        return null;
    }
}
