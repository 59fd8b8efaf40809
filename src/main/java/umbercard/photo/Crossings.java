package umbercard.photo;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import umbercard.geometry.Cubic;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;

/** Which outlines cross themselves or each other, told from fine polygons of them. */
final class Crossings {
    private static final int STEPS = 12;

    private Crossings() {}

    /** A side of one of the polygons. */
    private record Side(int outline, int place, int count, Point from, Point to) {
        double left() {
            return Math.min(from.x(), to.x());
        }

        double right() {
            return Math.max(from.x(), to.x());
        }

        boolean crosses(Side other) {
            return Math.max(from.y(), to.y()) >= Math.min(other.from.y(), other.to.y())
                    && Math.max(other.from.y(), other.to.y()) >= Math.min(from.y(), to.y())
                    && !isBeside(other)
                    && side(from, to, other.from) * side(from, to, other.to) < 0
                    && side(other.from, other.to, from) * side(other.from, other.to, to) < 0;
        }

        /** Whether the two share a corner. */
        private boolean isBeside(Side other) {
            int apart = Math.abs(place - other.place);
            return outline == other.outline && (apart <= 1 || apart == count - 1);
        }

        private static double side(Point a, Point b, Point c) {
            return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
        }
    }

    /** The places in the list of all that are crossed, by themselves or by another. */
    static BitSet among(List<Outline> outlines) {
        List<Side> sides = new ArrayList<>();
        for (int i = 0; i < outlines.size(); i++) {
            addSides(i, polygon(outlines.get(i)), sides);
        }
        Side[] byLeft = sides.toArray(Side[]::new);
        Arrays.sort(byLeft, Comparator.comparingDouble(Side::left));
        BitSet crossed = new BitSet();
        for (int i = 0; i < byLeft.length; i++) {
            double right = byLeft[i].right();
            for (int k = i + 1; k < byLeft.length && byLeft[k].left() <= right; k++) {
                if (byLeft[i].crosses(byLeft[k])) {
                    crossed.set(byLeft[i].outline());
                    crossed.set(byLeft[k].outline());
                }
            }
        }
        return crossed;
    }

    private static void addSides(int outline, List<Point> polygon, List<Side> sides) {
        int count = polygon.size();
        for (int i = 0; i < count; i++) {
            sides.add(new Side(outline, i, count, polygon.get(i), polygon.get((i + 1) % count)));
        }
    }

    private static List<Point> polygon(Outline outline) {
        List<Point> polygon = new ArrayList<>();
        for (Cubic segment : outline.segments()) {
            int steps = segment.isLine() ? 1 : STEPS;
            for (int i = 0; i < steps; i++) {
                polygon.add(segment.at((double) i / steps));
            }
        }
        return polygon;
    }
}
