package umbercard.model;

import java.util.List;
import java.util.stream.Stream;
import umbercard.geometry.Line;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.geometry.Region;

/**
 * How frames of one opening lie on one photograph, and what moves, scales, levels and mirrors them. Places on the
 * photograph are shares of its width and height; places in a frame are frame units: the frame's height is 1, y runs down.
 * The frame keeps the opening's proportions whatever is done to it.
 *
 * @param photographRatio width divided by height of the upright photograph
 * @param frameRatio width divided by height of the frame
 */
public record Framing(double photographRatio, double frameRatio) {
    /** The smallest and the largest height of a frame, in heights of the largest one that lies inside. */
    private static final double LEAST = 0.05;

    private static final double MOST = 3;

    /** What rounding may put outside. */
    private static final double ROUNDING = 1e-8;

    public Framing {
        if (!(photographRatio > 0) || !(frameRatio > 0)) {
            throw new IllegalArgumentException("ratios are over 0: " + photographRatio + ", " + frameRatio);
        }
    }

    /** The largest upright frame in the middle. */
    public Frame largest() {
        return Frame.largest(photographRatio, frameRatio);
    }

    /** Where a place in the frame lies on the photograph; outside 0..1 it lies beyond it. */
    public Point onPhotograph(Frame frame, Point inFrame) {
        double right = side(frame) * (inFrame.x() - frameRatio / 2);
        double down = frame.height() * (inFrame.y() - 0.5);
        double cos = cos(frame.tilt());
        double sin = sin(frame.tilt());
        return frame.center().plus((right * cos + down * sin) / photographRatio, down * cos - right * sin);
    }

    /** Where a place of the photograph lies in the frame. */
    public Point inFrame(Frame frame, Point onPhotograph) {
        double x = (onPhotograph.x() - frame.center().x()) * photographRatio;
        double y = onPhotograph.y() - frame.center().y();
        double cos = cos(frame.tilt());
        double sin = sin(frame.tilt());
        return new Point(
                frameRatio / 2 + (x * cos - y * sin) / side(frame), 0.5 + (x * sin + y * cos) / frame.height());
    }

    /** Whether no part of the frame reaches beyond the photograph. */
    public boolean isInside(Frame frame) {
        Point reach = reach(frame);
        return isBetween(reach.x(), frame.center().x())
                && isBetween(reach.y(), frame.center().y());
    }

    private static boolean isBetween(double reach, double center) {
        return center >= reach - ROUNDING && center <= 1 - reach + ROUNDING;
    }

    /** The frame moved as little as brings it inside the photograph, and made smaller where it is too large for that. */
    public Frame heldInside(Frame frame) {
        Point reach = reach(frame);
        double fit = Math.min(1, 0.5 / Math.max(reach.x(), reach.y()));
        Frame small = frame.withHeight(fit * frame.height());
        return small.withCenter(new Point(
                held(fit * reach.x(), frame.center().x()),
                held(fit * reach.y(), frame.center().y())));
    }

    private static double held(double reach, double center) {
        return reach >= 0.5 ? 0.5 : Math.max(reach, Math.min(1 - reach, center));
    }

    /** The frame moved on the photograph, as it is seen in the frame: to its right and down, in frame units. */
    public Frame moved(Frame frame, double right, double down) {
        return frame.withCenter(onPhotograph(frame, new Point(frameRatio / 2 + right, 0.5 + down)));
    }

    /**
     * The frame made larger or smaller about a place of the photograph, which keeps its place in the frame.
     *
     * @param factor over 0; held where the frame would be too small to paint from, or far too large
     */
    public Frame scaled(Frame frame, Point about, double factor) {
        double largest = largest().height();
        double height = Math.max(LEAST * largest, Math.min(MOST * largest, factor * frame.height()));
        return new Frame(about.toward(frame.center(), height / frame.height()), height, frame.tilt(), frame.mirrored());
    }

    /**
     * The largest factor, {@code wanted} at most, by which a frame inside the photograph can be scaled about a place inside
     * it and stay inside.
     */
    public double mostInside(Frame frame, Point about, double wanted) {
        Point reach = reach(frame);
        double across = most(reach.x(), frame.center().x(), about.x());
        return Math.min(wanted, Math.min(across, most(reach.y(), frame.center().y(), about.y())));
    }

    /** From the ends of the frame, {@code about + f (center − about ± reach)}, which must lie within 0..1. */
    private static double most(double reach, double center, double about) {
        double before = reach - (center - about);
        double after = reach + (center - about);
        double first = before > 0 ? about / before : Double.POSITIVE_INFINITY;
        double last = after > 0 ? (1 - about) / after : Double.POSITIVE_INFINITY;
        return Math.min(first, last);
    }

    /** The frame turned counter-clockwise by so many degrees about a place of the photograph, which keeps its place in it. */
    public Frame turned(Frame frame, Point about, double degrees) {
        double x = (frame.center().x() - about.x()) * photographRatio;
        double y = frame.center().y() - about.y();
        double cos = cos(degrees);
        double sin = sin(degrees);
        Point center = about.plus((x * cos + y * sin) / photographRatio, y * cos - x * sin);
        return frame.withCenter(center).withTilt(normal(frame.tilt() + degrees));
    }

    /** The frame turned about its middle to that many degrees. */
    public Frame turnedTo(Frame frame, double tilt) {
        return frame.withTilt(normal(tilt));
    }

    /** The frame turned about its middle so that a line on the photograph, in shares, runs level in it. */
    public Frame leveled(Frame frame, Line line) {
        return turnedTo(frame, tilt(line));
    }

    /** Degrees, counter-clockwise within −90..90, that a line on the photograph, in shares, is off level. */
    public double tilt(Line line) {
        double x = (line.to().x() - line.from().x()) * photographRatio;
        double y = line.to().y() - line.from().y();
        return Math.toDegrees(x < 0 ? StrictMath.atan2(y, -x) : StrictMath.atan2(-y, x));
    }

    /** The frame with left and right changed; it lies on the same part of the photograph. */
    public Frame mirrored(Frame frame) {
        return frame.withMirrored(!frame.mirrored());
    }

    /** How much of the photograph lies in the frame, 0..1. */
    public double shareUsed(Frame frame) {
        List<Point> corners = Stream.of(
                        new Point(0, 0), new Point(frameRatio, 0), new Point(frameRatio, 1), new Point(0, 1))
                .map(corner -> onPhotograph(frame, corner))
                .toList();
        return Region.of(Outline.polygon(corners))
                .intersect(Region.rectangle(0, 0, 1, 1))
                .area();
    }

    /** How much of the frame is bare card, 0..1. */
    public double shareBare(Frame frame) {
        double area = frame.height() * frame.height() * frameRatio / photographRatio;
        return Math.max(0, 1 - shareUsed(frame) / area);
    }

    /** How far the frame reaches from its middle along the photograph's sides, in shares. */
    private Point reach(Frame frame) {
        double across = frame.height() * frameRatio / 2;
        double down = frame.height() / 2;
        double cos = Math.abs(cos(frame.tilt()));
        double sin = Math.abs(sin(frame.tilt()));
        return new Point((across * cos + down * sin) / photographRatio, across * sin + down * cos);
    }

    private static double side(Frame frame) {
        return frame.mirrored() ? -frame.height() : frame.height();
    }

    private static double cos(double degrees) {
        return StrictMath.cos(Math.toRadians(degrees));
    }

    private static double sin(double degrees) {
        return StrictMath.sin(Math.toRadians(degrees));
    }

    /** Over −180 up to 180 degrees. */
    private static double normal(double degrees) {
        double turned = Math.IEEEremainder(degrees, 360);
        return turned == -180 ? 180 : turned + 0.0;
    }
}
