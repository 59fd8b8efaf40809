package umbercard.cards.svg;

import java.util.List;
import umbercard.geometry.Cubic;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;

/** Outlines as SVG path data in absolute coordinates. */
final class PathData {
    private PathData() {}

    /** One closed subpath an outline; outlines that enclose nothing are left out. */
    static String of(List<Outline> outlines) {
        StringBuilder data = new StringBuilder();
        for (Outline outline : outlines) {
            List<Cubic> segments = outline.segments();
            if (!segments.isEmpty()) {
                data.append('M').append(pair(segments.get(0).start()));
                segments.subList(0, segments.size() - 1).forEach(segment -> append(data, segment));
                Cubic last = segments.get(segments.size() - 1);
                if (!last.isLine()) {
                    append(data, last);
                }
                // A straight line back to the first point is what Z draws.
                data.append('Z');
            }
        }
        return data.toString();
    }

    private static void append(StringBuilder data, Cubic segment) {
        if (segment.isLine()) {
            data.append('L').append(pair(segment.end()));
        } else {
            data.append('C').append(pair(segment.pullStart()));
            data.append(' ').append(pair(segment.pullEnd()));
            data.append(' ').append(pair(segment.end()));
        }
    }

    /** The points of a straight-sided line. */
    static String points(List<Point> points) {
        return String.join(" ", points.stream().map(PathData::pair).toList());
    }

    private static String pair(Point point) {
        return Numbers.write(point.x()) + "," + Numbers.write(point.y());
    }
}
