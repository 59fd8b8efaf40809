package umbercard.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/**
 * A curve followed through a region: it is cut wherever it meets the border, and each part is inside or not as its middle is.
 * Places where it only seems to meet the border cost a little but change nothing, so none need be told apart.
 */
final class Track {
    /** What lies so near to the border lies on it. */
    static final double SLACK = 0x1p-26;

    /** A curved segment is cut into so many parts, so that few edges lie near each and its length is integrated well. */
    private static final int PARTS = 16;

    private record Edge(Coordinate from, Coordinate to) {}

    private record Part(Cubic curve, double start, double length) {
        Envelope bounds() {
            Envelope bounds = new Envelope();
            for (Point point : List.of(curve.start(), curve.pullStart(), curve.pullEnd(), curve.end())) {
                bounds.expandToInclude(point.x(), point.y());
            }
            bounds.expandBy(SLACK);
            return bounds;
        }

        double along(double t) {
            return t == 1 ? start + length : start + arc(curve, t);
        }
    }

    private final List<Part> parts = new ArrayList<>();
    private final Map<Double, Point> places = new TreeMap<>();
    private double total;

    Track(Path path) {
        for (Cubic segment : path.segments()) {
            int count = segment.isLine() ? 1 : PARTS;
            for (int i = 0; i < count; i++) {
                Cubic curve = segment.isLine() ? segment : segment.part((double) i / count, (i + 1.0) / count);
                Part part = new Part(curve, total, arc(curve, 1));
                parts.add(part);
                total += part.length;
            }
        }
    }

    double length() {
        return total;
    }

    /** A place given by {@link #inside}, by the length along to it. */
    Point at(double along) {
        return places.getOrDefault(along, parts.get(parts.size() - 1).curve.end());
    }

    /** The length up to a parameter, by Gauss-Legendre quadrature with six places (table 25.4 of Abramowitz and Stegun 1964). */
    private static double arc(Cubic curve, double t) {
        double sum = 0;
        for (int i = 0; i < Green.PLACES.length; i++) {
            double one = curve.rate(t * (1 - Green.PLACES[i]) / 2).length();
            double two = curve.rate(t * (1 + Green.PLACES[i]) / 2).length();
            sum += Green.WEIGHTS[i] * (one + two);
        }
        return sum * t / 2;
    }

    /** The parts inside in order, by lengths from the start; some may follow each other without a gap. */
    List<Stretch> inside(Region region) {
        List<List<Edge>> near = near(region);
        List<Stretch> inside = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            inside(region, parts.get(i), near.get(i), inside);
        }
        return inside;
    }

    private List<List<Edge>> near(Region region) {
        List<Envelope> bounds = parts.stream().map(Part::bounds).toList();
        List<List<Edge>> near = new ArrayList<>();
        Envelope all = new Envelope();
        for (Envelope one : bounds) {
            near.add(new ArrayList<>());
            all.expandToInclude(one);
        }
        region.eachEdge((from, to) -> {
            if (all.intersects(from, to)) {
                for (int i = 0; i < bounds.size(); i++) {
                    if (bounds.get(i).intersects(from, to)) {
                        near.get(i).add(new Edge(from, to));
                    }
                }
            }
        });
        return near;
    }

    private void inside(Region region, Part part, List<Edge> near, List<Stretch> inside) {
        List<Double> cuts = new ArrayList<>(List.of(0.0, 1.0));
        near.forEach(edge -> cut(part.curve, edge, cuts));
        Collections.sort(cuts);
        for (int i = 1; i < cuts.size(); i++) {
            double from = cuts.get(i - 1);
            double to = cuts.get(i);
            Point middle = part.curve.at((from + to) / 2);
            if (from < to && (region.contains(middle) || isNear(middle, near))) {
                // Two cuts an ulp apart may come out in the wrong order by rounding.
                double start = mark(part, from);
                inside.add(new Stretch(start, Math.max(start, mark(part, to))));
            }
        }
    }

    private double mark(Part part, double t) {
        double along = part.along(t);
        places.put(along, part.curve.at(t));
        return along;
    }

    private static boolean isNear(Point point, List<Edge> near) {
        Coordinate at = new Coordinate(point.x(), point.y());
        return near.stream().anyMatch(edge -> Distance.pointToSegment(at, edge.from, edge.to) <= SLACK);
    }

    /** Adds the parameters where a curve crosses an edge, or where it comes beside one of its ends while it runs along it. */
    private static void cut(Cubic curve, Edge edge, List<Double> cuts) {
        double length = edge.from.distance(edge.to);
        Vector ahead = new Vector((edge.to.x - edge.from.x) / length, (edge.to.y - edge.from.y) / length);
        Bernstein beside = of(curve, edge.from, new Vector(-ahead.y(), ahead.x()));
        Bernstein along = of(curve, edge.from, ahead);
        for (double t : beside.zeros()) {
            double place = along.at(t);
            if (place >= -SLACK && place <= length + SLACK) {
                cuts.add(t);
            }
        }
        if (beside.least() >= -SLACK && beside.greatest() <= SLACK) {
            cuts.addAll(along.zeros());
            cuts.addAll(of(curve, edge.to, ahead).zeros());
        }
    }

    /** How far the curve has come from a place in a direction. */
    private static Bernstein of(Cubic curve, Coordinate from, Vector direction) {
        Point origin = new Point(from.x, from.y);
        return new Bernstein(
                Vector.between(origin, curve.start()).dot(direction),
                Vector.between(origin, curve.pullStart()).dot(direction),
                Vector.between(origin, curve.pullEnd()).dot(direction),
                Vector.between(origin, curve.end()).dot(direction));
    }
}
