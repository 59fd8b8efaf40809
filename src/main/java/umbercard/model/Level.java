package umbercard.model;

import umbercard.geometry.Line;
import umbercard.geometry.Point;

/**
 * A line across the whole frame: a horizon, a land edge or a waterline.
 *
 * @param y its height at the middle of the frame, down from the upper edge, in frame units
 * @param tilt degrees, counter-clockwise; 0 is level, within -89..89
 */
public record Level(double y, double tilt) {
    private static final double STEEPEST = 89;

    public Level {
        if (!Double.isFinite(y) || !(Math.abs(tilt) <= STEEPEST)) {
            throw new IllegalArgumentException("a level has a finite height and lies within 89 degrees of level");
        }
    }

    public static Level at(double y) {
        return new Level(y, 0);
    }

    /** The level along a line, which is not upright, in a frame {@code ratio} wide; one steeper than 89 degrees is held there. */
    public static Level along(Line line, double ratio) {
        double slope =
                (line.to().y() - line.from().y()) / (line.to().x() - line.from().x());
        double y = line.from().y() + slope * (ratio / 2 - line.from().x());
        return new Level(y, Math.max(-STEEPEST, Math.min(STEEPEST, -Math.toDegrees(StrictMath.atan(slope)))));
    }

    /** The line from the frame's left side to its right, in a frame {@code ratio} wide. */
    public Line across(double ratio) {
        return new Line(new Point(0, yAt(0, ratio)), new Point(ratio, yAt(ratio, ratio)));
    }

    /** Down from the upper edge at {@code x}, in a frame {@code ratio} wide. */
    public double yAt(double x, double ratio) {
        return y - Math.tan(Math.toRadians(tilt)) * (x - ratio / 2);
    }
}
