package umbercard.model;

/**
 * A line across the whole frame: a horizon, a land edge or a waterline.
 *
 * @param y its height at the middle of the frame, down from the upper edge, in frame units
 * @param tilt degrees, counter-clockwise; 0 is level, within -89..89
 */
public record Level(double y, double tilt) {
    public Level {
        if (!Double.isFinite(y) || !(Math.abs(tilt) <= 89)) {
            throw new IllegalArgumentException("a level has a finite height and lies within 89 degrees of level");
        }
    }

    public static Level at(double y) {
        return new Level(y, 0);
    }

    /** Down from the upper edge at {@code x}, in a frame {@code ratio} wide. */
    public double yAt(double x, double ratio) {
        return y - Math.tan(Math.toRadians(tilt)) * (x - ratio / 2);
    }
}
