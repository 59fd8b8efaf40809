package umbercard.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** A drawn line of points without repeats, with its corners and with directions taken over a window of its length. */
final class Stroke {
    private final List<Point> raw;
    private final List<Point> points;
    private final boolean closed;
    private final double window;

    /** The length drawn up to each point. */
    private final double[] drawn;

    private final boolean[] corners;

    private Stroke(List<Point> raw, boolean closed, double window, double grain) {
        this.raw = List.copyOf(raw);
        points = new ArrayList<>(raw);
        this.closed = closed;
        this.window = window;
        drawn = new double[points.size()];
        for (int i = 1; i < drawn.length; i++) {
            drawn[i] = drawn[i - 1] + points.get(i - 1).distance(points.get(i));
        }
        corners = new boolean[drawn.length];
        findCorners();
        smooth(grain);
    }

    /** Between corners, which stay. */
    private void smooth(double grain) {
        if (grain == 0) {
            return;
        }
        if (closed && !isAnyCorner()) {
            Collections.copy(points, Smoothing.closed(raw, grain));
            return;
        }
        int first = 0;
        for (int i = 1; i < size(); i++) {
            if (corners[i] || i == size() - 1) {
                Collections.copy(points.subList(first, i + 1), Smoothing.open(raw.subList(first, i + 1), grain));
                first = i;
            }
        }
    }

    private boolean isAnyCorner() {
        for (boolean corner : corners) {
            if (corner) {
                return true;
            }
        }
        return false;
    }

    static Stroke open(List<Point> raw, double window, double grain) {
        return new Stroke(withoutRepeats(raw), false, window, grain);
    }

    /** Turned so that it starts and ends at a corner, if it has one; its last point repeats its first. */
    static Stroke closed(List<Point> raw, double window, double grain) {
        List<Point> points = withoutRepeats(raw);
        while (points.size() > 1 && points.get(0).equals(points.get(points.size() - 1))) {
            points.remove(points.size() - 1);
        }
        if (points.size() < 3) {
            return new Stroke(points, false, window, grain);
        }
        List<Point> round = new ArrayList<>(points);
        round.add(points.get(0));
        Stroke stroke = new Stroke(round, true, window, grain);
        int start = 0;
        while (start < points.size() && !stroke.corners[start]) {
            start++;
        }
        if (start == 0 || start == points.size()) {
            return stroke;
        }
        List<Point> turned = new ArrayList<>(points.subList(start, points.size()));
        turned.addAll(points.subList(0, start + 1));
        return new Stroke(turned, true, window, grain);
    }

    private static List<Point> withoutRepeats(List<Point> raw) {
        List<Point> points = new ArrayList<>(raw.size());
        for (Point point : raw) {
            if (points.isEmpty() || !points.get(points.size() - 1).equals(point)) {
                points.add(point);
            }
        }
        return points;
    }

    int size() {
        return points.size();
    }

    List<Point> points() {
        return points;
    }

    List<Point> raw() {
        return raw;
    }

    Point at(int i) {
        return points.get(i);
    }

    boolean isCorner(int i) {
        return corners[i];
    }

    /** The unit direction in which the line leaves a point, taken no further than {@code last}. */
    Vector directionAfter(int i, int last) {
        if (closed && !corners[0] && i == 0) {
            return tangentBack(0, 0, last).times(-1);
        }
        Point there = place(Math.min(drawn[i] + window / 2, drawn[last]));
        return direction(at(i), there, at(i + 1));
    }

    /** The unit direction back along the line from a point, taken no further than {@code first}. */
    Vector directionBefore(int i, int first) {
        if (closed && !corners[0] && i == size() - 1) {
            return tangentBack(i, first, i);
        }
        Point there = place(Math.max(drawn[i] - window / 2, drawn[first]));
        return direction(at(i), there, at(i - 1));
    }

    /** The unit tangent of a point passed smoothly, against the way drawn, taken no further than the part's ends. */
    Vector tangentBack(int i, int first, int last) {
        double half = window / 2;
        boolean atSeam = closed && !corners[0] && (i == 0 || i == size() - 1);
        double reach = atSeam ? half : Math.min(half, Math.min(drawn[i] - drawn[first], drawn[last] - drawn[i]));
        return direction(place(drawn[i] + reach), place(drawn[i] - reach), at(i == 0 ? size() - 2 : i - 1));
    }

    private static Vector direction(Point from, Point to, Point otherwise) {
        Vector far = Vector.between(from, to);
        return (far.length() > 0 ? far : Vector.between(from, otherwise)).unit();
    }

    /** The place after a length drawn; a closed line goes on round. */
    private Point place(double length) {
        double total = drawn[drawn.length - 1];
        double along = closed ? length - total * Math.floor(length / total) : Math.max(0, Math.min(total, length));
        int low = 0;
        int high = drawn.length - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (drawn[middle] <= along) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return at(low).toward(at(high), Math.min(1, (along - drawn[low]) / (drawn[high] - drawn[low])));
    }

    private void findCorners() {
        int n = size();
        if (n < 3) {
            return;
        }
        double[] turns = new double[n];
        for (int i = closed ? 0 : 1; i < n - 1; i++) {
            turns[i] = turn(i);
        }
        turns[n - 1] = closed ? turns[0] : 0;
        for (int i = 0; i < n; i++) {
            corners[i] = turns[i] >= CurveFit.CORNER_DEGREES && isSharpest(i, turns);
        }
        double gap = drawn[n - 1] - drawn[n - 2];
        if (closed && gap > window) {
            corners[0] = true;
            corners[n - 2] = true;
        }
        corners[n - 1] = corners[0];
    }

    /** By how many degrees the line turns at a point, from the window before to the window after. */
    private double turn(int i) {
        Vector before = Vector.between(place(drawn[i] - window), at(i));
        Vector after = Vector.between(at(i), place(drawn[i] + window));
        double cross = before.x() * after.y() - before.y() * after.x();
        return Math.toDegrees(Math.abs(StrictMath.atan2(cross, before.dot(after))));
    }

    /** Whether no other point within the window turns more, nor an earlier one as much. */
    private boolean isSharpest(int i, double[] turns) {
        for (int j = i - 1; j >= 0 && drawn[i] - drawn[j] < window; j--) {
            if (turns[j] >= turns[i]) {
                return false;
            }
        }
        for (int j = i + 1; j < turns.length && drawn[j] - drawn[i] < window; j++) {
            if (turns[j] > turns[i]) {
                return false;
            }
        }
        return true;
    }
}
