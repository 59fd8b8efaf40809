package umbercard.desk.instruments;

import umbercard.door.Gesture;
import umbercard.geometry.Point;

/** How near a hand has to come. A pen trembles, so the measure is generous and the same everywhere. */
final class Reach {
    /** Screen pixels within which a pointer is at a thing, and a press that travels less is a click. */
    static final double PIXELS = 8;

    private Reach() {}

    /** The reach in frame units. */
    static double of(Gesture gesture) {
        return PIXELS * gesture.pixel();
    }

    /** Whether the gesture is at {@code place}. */
    static boolean isAt(Gesture gesture, Point place) {
        return gesture.at().distance(place) < of(gesture);
    }
}
