package umbercard.desk.instruments;

import umbercard.geometry.Point;
import umbercard.model.Level;

/** Where a line across the frame comes to lie when a hand moves it. {@code ratio} is the frame's width. */
final class Levels {
    /** Steeper than this, in degrees, a line across the frame is neither horizon nor land edge. */
    static final double STEEPEST = 45;

    /** Tilts under this many degrees are meant to be level. */
    private static final double NEARLY_LEVEL = 0.25;

    /** The grid that coordinates snap to when an edit is made. */
    private static final double GRID = 1e7;

    private Levels() {}

    /** The line of that tilt through {@code point}, its middle kept within the frame. */
    static Level through(Point point, double tilt, double ratio) {
        return at(point.y() + Math.tan(Math.toRadians(tilt)) * (point.x() - ratio / 2), tilt);
    }

    /** The line turned about its middle to pass {@code point}; the same line where that is under {@code tooNear} to tell. */
    static Level turnedTo(Point point, Level line, double ratio, double tooNear) {
        double across = point.x() - ratio / 2;
        if (Math.abs(across) < tooNear) {
            return line;
        }
        double tilt = Math.toDegrees(Math.atan((line.y() - point.y()) / across));
        return at(line.y(), Math.abs(tilt) < NEARLY_LEVEL ? 0 : tilt);
    }

    /** The line at that height and tilt, kept within the frame and under the steepest, on the grid of edits. */
    static Level at(double y, double tilt) {
        return new Level(snapped(Math.max(0, Math.min(1, y))), snapped(Math.max(-STEEPEST, Math.min(STEEPEST, tilt))));
    }

    private static double snapped(double value) {
        return Math.rint(value * GRID) / GRID + 0.0;
    }
}
