package umbercard.desk.framing;

import java.util.List;
import umbercard.geometry.Point;
import umbercard.model.Frame;
import umbercard.model.Framing;

/**
 * What part of the photograph, and how much round it, a view shows: a frame as well, with the view's proportions and the
 * painted frame's tilt and mirroring. So the painted frame stands upright in the view and the photograph is turned under
 * it, which is how it will lie on the card.
 *
 * @param plane of the view, as wide as it is
 * @param frame the part in view
 * @param height of the view, in pixels
 */
record Sight(Framing plane, Frame frame, double height) {
    /** The whole photograph and the whole frame with a margin round them, all in pixels. */
    static Sight of(Framing framing, Frame frame, double width, double height, double margin) {
        List<Point> corners = List.of(
                new Point(0, 0),
                new Point(framing.frameRatio(), 1),
                framing.inFrame(frame, new Point(0, 0)),
                framing.inFrame(frame, new Point(1, 0)),
                framing.inFrame(frame, new Point(1, 1)),
                framing.inFrame(frame, new Point(0, 1)));
        double left = corners.stream().mapToDouble(Point::x).min().orElseThrow();
        double right = corners.stream().mapToDouble(Point::x).max().orElseThrow();
        double top = corners.stream().mapToDouble(Point::y).min().orElseThrow();
        double bottom = corners.stream().mapToDouble(Point::y).max().orElseThrow();
        double scale = Math.min(
                Math.max(1, width - 2 * margin) / (right - left), Math.max(1, height - 2 * margin) / (bottom - top));
        Point middle = framing.onPhotograph(frame, new Point((left + right) / 2, (top + bottom) / 2));
        return new Sight(
                new Framing(framing.photographRatio(), width / height),
                frame.withCenter(middle).withHeight(height / scale * frame.height()),
                height);
    }

    /** The place of the photograph, in shares, at a pixel of the view. */
    Point onPhotograph(double x, double y) {
        return plane.onPhotograph(frame, new Point(x / height, y / height));
    }

    /** The pixel at which a place of the photograph, in shares, is seen. */
    Point onScreen(Point place) {
        Point seen = plane.inFrame(frame, place);
        return new Point(seen.x() * height, seen.y() * height);
    }

    /** The same when the painted frame is turned about {@code about}: the photograph turns in the view. */
    Sight turned(Point about, double degrees) {
        return new Sight(plane, plane.turned(frame, about, degrees), height);
    }
}
