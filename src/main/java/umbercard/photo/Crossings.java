package umbercard.photo;

import java.util.ArrayList;
import java.util.List;
import umbercard.geometry.Cubic;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;

/** Whether an outline crosses itself, told from a fine polygon of it. */
final class Crossings {
    private static final int STEPS = 12;

    private Crossings() {}

    static boolean crossesItself(Outline outline) {
        List<Point> polygon = new ArrayList<>();
        for (Cubic segment : outline.segments()) {
            int steps = segment.isLine() ? 1 : STEPS;
            for (int i = 0; i < steps; i++) {
                polygon.add(segment.at((double) i / steps));
            }
        }
        return crosses(polygon);
    }

    private static boolean crosses(List<Point> polygon) {
        int count = polygon.size();
        for (int i = 0; i < count; i++) {
            Point a = polygon.get(i);
            Point b = polygon.get((i + 1) % count);
            // Sides that share a corner are left out.
            int last = i == 0 ? count - 1 : count;
            for (int k = i + 2; k < last; k++) {
                if (cross(a, b, polygon.get(k), polygon.get((k + 1) % count))) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean cross(Point a, Point b, Point c, Point d) {
        boolean apart = Math.max(a.x(), b.x()) < Math.min(c.x(), d.x())
                || Math.max(c.x(), d.x()) < Math.min(a.x(), b.x())
                || Math.max(a.y(), b.y()) < Math.min(c.y(), d.y())
                || Math.max(c.y(), d.y()) < Math.min(a.y(), b.y());
        return !apart && side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
    }

    private static double side(Point a, Point b, Point c) {
        return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
    }
}
