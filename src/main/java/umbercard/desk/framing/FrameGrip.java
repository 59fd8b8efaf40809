package umbercard.desk.framing;

import umbercard.geometry.Point;
import umbercard.model.Frame;
import umbercard.model.Framing;

/** What of the frame a hand has taken hold of; gives the frame for where the hand is now. Works in pixels of the view. */
interface FrameGrip {
    /** Pixels within which a hand is at a corner. */
    double REACH = 12;

    /** Tilts under this many degrees are meant to be upright. */
    double NEARLY_UPRIGHT = 0.25;

    /** What the view showed when it was taken hold of. */
    Sight sight();

    /** The frame when the hand is at {@code at}. */
    Frame to(Point at);

    /** What the menu calls it after "Undo": the last word of its key. */
    String name();

    /**
     * Takes hold: of a corner, which scales about the opposite one; of the frame, which moves it; of the photograph outside
     * it, which turns it.
     *
     * @param turning whether the hand wants to turn it wherever it is
     * @param inside whether the frame is to stay inside the photograph
     */
    static FrameGrip at(Point at, boolean turning, Framing framing, Frame frame, Sight sight, boolean inside) {
        if (!turning) {
            double right = framing.frameRatio();
            for (Point corner :
                    new Point[] {new Point(0, 0), new Point(right, 0), new Point(right, 1), new Point(0, 1)}) {
                Point seen = sight.onScreen(framing.onPhotograph(frame, corner));
                if (seen.distance(at) <= REACH) {
                    return new Corner(framing, frame, sight, inside, corner, at);
                }
            }
            Point in = framing.inFrame(frame, sight.onPhotograph(at.x(), at.y()));
            if (in.x() >= 0 && in.x() <= right && in.y() >= 0 && in.y() <= 1) {
                return new Whole(framing, frame, sight, inside, at);
            }
        }
        return new Turn(framing, frame, sight, inside, at);
    }

    /** Moves the frame with the hand. */
    record Whole(Framing framing, Frame from, Sight sight, boolean inside, Point taken) implements FrameGrip {
        @Override
        public Frame to(Point at) {
            Point was = sight.onPhotograph(taken.x(), taken.y());
            Point is = sight.onPhotograph(at.x(), at.y());
            Frame moved = from.withCenter(from.center().plus(is.x() - was.x(), is.y() - was.y()));
            return inside ? framing.heldInside(moved) : moved;
        }

        @Override
        public String name() {
            return "move";
        }
    }

    /** Scales the frame about the corner opposite to the one in the hand, in its own proportions. */
    record Corner(Framing framing, Frame from, Sight sight, boolean inside, Point corner, Point taken)
            implements FrameGrip {
        @Override
        public Frame to(Point at) {
            Point anchor = new Point(framing.frameRatio() - corner.x(), 1 - corner.y());
            Point was = framing.inFrame(from, sight.onPhotograph(taken.x(), taken.y()));
            Point is = framing.inFrame(from, sight.onPhotograph(at.x(), at.y()));
            double across = corner.x() - anchor.x();
            double down = corner.y() - anchor.y();
            double along = (across + is.x() - was.x()) * across + (down + is.y() - was.y()) * down;
            double wanted = Math.max(0, along / (across * across + down * down));
            Point about = framing.onPhotograph(from, anchor);
            if (!inside) {
                return framing.scaled(from, about, wanted);
            }
            return framing.heldInside(framing.scaled(from, about, framing.mostInside(from, about, wanted)));
        }

        @Override
        public String name() {
            return "scale";
        }
    }

    /** Turns the photograph under the frame, about the frame's middle. */
    record Turn(Framing framing, Frame from, Sight sight, boolean inside, Point taken) implements FrameGrip {
        @Override
        public Frame to(Point at) {
            Point middle = sight.onScreen(from.center());
            double turn = Math.toDegrees(angle(middle, at) - angle(middle, taken));
            // The photograph goes with the hand, so the frame goes the other way on it; in a mirror it is seen to do
            // both.
            double tilt = from.tilt() + (from.mirrored() ? turn : -turn);
            Frame turned = framing.turnedTo(from, tilt);
            Frame meant = Math.abs(turned.tilt()) < NEARLY_UPRIGHT ? turned.withTilt(0) : turned;
            return inside ? framing.heldInside(meant) : meant;
        }

        /** Counter-clockwise as seen, while y runs down. */
        private static double angle(Point middle, Point at) {
            return Math.atan2(middle.y() - at.y(), at.x() - middle.x());
        }

        @Override
        public String name() {
            return "tilt";
        }
    }
}
