package umbercard.spectra;

import java.util.List;
import umbercard.geometry.Point;

/**
 * A camera that looks down at a tilt on a flat thing, worked out in space. The thing's unit is the millimeter.
 *
 * @param width of the picture in pixels
 * @param height of the picture in pixels
 * @param middle the place that stands in the picture's middle
 * @param tilt of the thing, in radians: over 0 its lower edge is nearer
 * @param turn of the thing in its plane, in radians, clockwise
 * @param away how far the camera is, in millimeters
 * @param pixels that a millimeter in the middle has
 */
public record Pinhole(int width, int height, Point middle, double tilt, double turn, double away, double pixels) {

    /** Where a place is seen, in pixels. */
    public Point seen(Point place) {
        double x = place.x() - middle.x();
        double y = place.y() - middle.y();
        double across = x * Math.cos(turn) - y * Math.sin(turn);
        double down = x * Math.sin(turn) + y * Math.cos(turn);
        double near = away / (away - down * Math.sin(tilt));
        return new Point(width / 2.0 + pixels * near * across, height / 2.0 + pixels * near * down * Math.cos(tilt));
    }

    /** Which place is seen at a pixel; written into {@code place}. */
    public void place(double x, double y, double[] place) {
        double up = (y - height / 2.0) / pixels / away;
        double down = up * away / (Math.cos(tilt) + up * Math.sin(tilt));
        double across = (x - width / 2.0) / pixels * (away - down * Math.sin(tilt)) / away;
        place[0] = middle.x() + across * Math.cos(turn) + down * Math.sin(turn);
        place[1] = middle.y() - across * Math.sin(turn) + down * Math.cos(turn);
    }

    /** The corners of an upright rectangle from the origin, as they are seen, clockwise from the upper left. */
    public List<Point> corners(double wide, double tall) {
        return List.of(
                seen(new Point(0, 0)), seen(new Point(wide, 0)), seen(new Point(wide, tall)), seen(new Point(0, tall)));
    }
}
