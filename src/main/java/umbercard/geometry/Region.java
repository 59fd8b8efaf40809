package umbercard.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.IntPredicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.noding.snapround.SnapRoundingNoder;

/**
 * A part of the plane with a straight-sided border, of any number of pieces with any number of holes. Immutable and safe
 * to share between threads.
 *
 * <p>Curves come in flattened so that their areas are kept ({@link Flattening}: within 2e-5 of the curve), and every corner
 * lies on a fixed grid of 2⁻³⁰ of the unit, so joining, cutting and intersecting never fail: near-copies, shared edges,
 * slivers, spikes and outlines that cross themselves are ordinary input, and what encloses nothing gives the empty region.
 * Corners further than 2²⁰ units from the origin are held at that distance. An area is right to half a grid step times the
 * border's length for straight sides.
 */
public final class Region {
    private static final Region EMPTY = new Region(List.of());

    private final List<Polygon> polygons;

    @Nullable
    private volatile IndexedPointInAreaLocator locator;

    @Nullable
    private volatile Border border;

    private Region(List<Polygon> polygons) {
        this.polygons = List.copyOf(polygons);
    }

    private static Region with(List<Polygon> polygons) {
        return polygons.isEmpty() ? EMPTY : new Region(polygons);
    }

    /** Nothing. */
    public static Region empty() {
        return EMPTY;
    }

    /** The rectangle with the two opposite corners; empty if it has no width or no height. */
    public static Region rectangle(double left, double top, double right, double bottom) {
        return of(Outline.rectangle(left, top, right, bottom));
    }

    /** What an outline fills by the non-zero rule, as ink does. */
    public static Region of(Outline outline) {
        return of(List.of(outline));
    }

    /** What several outlines fill together by the non-zero rule: one that runs the other way round cuts a hole. */
    public static Region of(Collection<Outline> outlines) {
        return filled(outlines, winding -> winding != 0);
    }

    /** What several outlines fill together by the even-odd rule: each cuts a hole in those around it. */
    public static Region evenOdd(List<Outline> outlines) {
        return filled(outlines, winding -> (winding & 1) != 0);
    }

    private static Region filled(Collection<Outline> outlines, IntPredicate inside) {
        Overlay overlay = new Overlay();
        outlines.forEach(outline -> overlay.add(Flattening.ring(outline), 1));
        return with(overlay.fill(inside));
    }

    /** What lies in this region or in the other. */
    public Region union(Region other) {
        if (covers(other) || other.covers(this)) {
            return covers(other) ? this : other;
        }
        return apart(other) ? both(other) : overlay(other, 1, winding -> winding > 0);
    }

    /** What lies in this region but not in the other. */
    public Region minus(Region other) {
        return apart(other) ? this : other.covers(this) ? EMPTY : overlay(other, 2, winding -> winding == 1);
    }

    /** What lies in this region and in the other. */
    public Region intersect(Region other) {
        if (covers(other) || other.covers(this)) {
            return covers(other) ? other : this;
        }
        return apart(other) ? EMPTY : overlay(other, 1, winding -> winding == 2);
    }

    private boolean apart(Region other) {
        return isEmpty() || other.isEmpty() || !bounds().intersects(other.bounds());
    }

    private Region both(Region other) {
        return isEmpty()
                ? other
                : other.isEmpty()
                        ? this
                        : with(Stream.concat(polygons.stream(), other.polygons.stream())
                                .toList());
    }

    private Region overlay(Region other, int weight, IntPredicate inside) {
        Envelope meeting = bounds().intersection(other.bounds());
        PrecisionModel grid = Grid.FINE_TO_COARSE.get(0);
        return new Patch(border(), 1, other.border(), weight, inside, meeting)
                .polygons(new SnapRoundingNoder(grid), 4 / grid.getScale())
                .map(Region::with)
                .orElseGet(() -> overlayAll(other, weight, inside));
    }

    /** The slow way, which never fails. */
    private Region overlayAll(Region other, int weight, IntPredicate inside) {
        Overlay overlay = new Overlay();
        polygons.forEach(polygon -> overlay.add(polygon, 1));
        other.polygons.forEach(polygon -> overlay.add(polygon, weight));
        return with(overlay.fill(inside));
    }

    /** Whether this region is one upright rectangle all round the other. */
    private boolean covers(Region other) {
        return polygons.size() == 1 && polygons.get(0).isRectangle() && bounds().covers(other.bounds());
    }

    Envelope bounds() {
        Envelope bounds = new Envelope();
        polygons.forEach(polygon -> bounds.expandToInclude(polygon.getEnvelopeInternal()));
        return bounds;
    }

    /** Whether this region has no area. */
    public boolean isEmpty() {
        return polygons.isEmpty();
    }

    /** In square units, 0 or more. */
    public double area() {
        return polygons.stream().mapToDouble(Polygon::getArea).sum();
    }

    /** Area and moments about the origin, in closed form. */
    public Moments moments() {
        return outlines().stream().map(ring -> Green.moments(ring.segments())).reduce(Moments.ZERO, Moments::plus);
    }

    /** The length of the whole border, holes' included. */
    public double perimeter() {
        return polygons.stream().mapToDouble(Polygon::getLength).sum();
    }

    /** Whether the point lies inside or on the border. */
    public boolean contains(Point point) {
        return !isEmpty() && located().locate(new Coordinate(point.x(), point.y())) != Location.EXTERIOR;
    }

    private IndexedPointInAreaLocator located() {
        IndexedPointInAreaLocator known = locator;
        if (known == null) {
            known = new IndexedPointInAreaLocator(Overlay.collected(polygons));
            locator = known;
        }
        return known;
    }

    private Border border() {
        Border known = border;
        if (known == null) {
            known = new Border(polygons);
            border = known;
        }
        return known;
    }

    /** Each edge of the border, with the region on its left hand where y runs up: {@code x} grows along an upper side. */
    void eachEdge(BiConsumer<Coordinate, Coordinate> taker) {
        for (Polygon polygon : polygons) {
            for (int i = -1; i < polygon.getNumInteriorRing(); i++) {
                Coordinate[] ring = (i < 0 ? polygon.getExteriorRing() : polygon.getInteriorRingN(i)).getCoordinates();
                for (int k = 1; k < ring.length; k++) {
                    taker.accept(ring[k - 1], ring[k]);
                }
            }
        }
    }

    /** Regions that do not overlap nor share an edge, as one. */
    static Region together(List<Region> apart) {
        return with(apart.stream()
                .flatMap(region -> region.polygons.stream())
                .sorted(Comparator.comparing(Polygon::getCoordinate))
                .toList());
    }

    /** Turned over about the upright line at half of {@code width}, which is rounded to the grid; exact. */
    Region mirrored(double width) {
        double sum = Overlay.FACTORY.getPrecisionModel().makePrecise(width);
        return with(polygons.stream()
                .map(polygon -> Overlay.mirrored(polygon, sum))
                .sorted(Comparator.comparing(Polygon::getCoordinate))
                .toList());
    }

    /** As the overlay library has it; not to be changed. */
    Geometry geometry() {
        return Overlay.collected(polygons);
    }

    /** What valid polygons of the overlay library cover together, brought onto the grid. */
    static Region covered(Geometry polygons) {
        Overlay overlay = new Overlay();
        for (int i = 0; i < polygons.getNumGeometries(); i++) {
            if (polygons.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
                overlay.add(polygon, Orientation.isCCW(polygon.getExteriorRing().getCoordinateSequence()) ? 1 : -1);
            }
        }
        return with(overlay.fill(winding -> winding > 0));
    }

    /** The connected pieces, each with its holes; those that touch only in points are apart. */
    public List<Region> pieces() {
        return polygons.stream().map(polygon -> new Region(List.of(polygon))).toList();
    }

    /**
     * The rings of the border, for even-odd and for non-zero filling alike: outer rings run counter-clockwise where y runs up
     * (clockwise as seen on a card), holes the other way.
     */
    public List<Outline> outlines() {
        List<Outline> rings = new ArrayList<>();
        for (Polygon polygon : polygons) {
            rings.add(outline(polygon.getExteriorRing()));
            for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
                rings.add(outline(polygon.getInteriorRingN(i)));
            }
        }
        return List.copyOf(rings);
    }

    /**
     * One outline for each connected piece, for even-odd and for non-zero filling alike; one with holes runs to each of them, round
     * it, and back the same way.
     */
    public List<Outline> outlinesOfPieces() {
        return polygons.stream()
                .map(polygon -> {
                    List<Point> round = new ArrayList<>(corners(polygon.getExteriorRing()));
                    for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
                        round.add(round.get(0));
                        List<Point> hole = corners(polygon.getInteriorRingN(i));
                        round.addAll(hole);
                        round.add(hole.get(0));
                    }
                    return Outline.polygon(round);
                })
                .toList();
    }

    private static Outline outline(LinearRing ring) {
        return Outline.polygon(corners(ring));
    }

    private static List<Point> corners(LinearRing ring) {
        Coordinate[] all = ring.getCoordinates();
        return Arrays.stream(all, 0, all.length - 1)
                .map(c -> new Point(c.x, c.y))
                .toList();
    }
}
