package umbercard.desk.framing;

import java.util.Optional;
import umbercard.geometry.Line;
import umbercard.geometry.Point;

/**
 * Marking the photograph's own horizon: a drag along it, or two places on it, each clicked, or set by the keyboard at a
 * cross that the arrow keys move. Places are pixels of the view.
 */
final class HorizonMarking {
    /** A press that travels less is a click; a horizon that is shorter tells nothing. */
    private static final double CLICK = 8;

    private Point at;
    private Optional<Point> first = Optional.empty();
    private boolean pressed;

    /** Begins with the cross at {@code at} and no place set. */
    HorizonMarking(Point at) {
        this.at = at;
    }

    /** Where the hand, or the cross, is. */
    Point at() {
        return at;
    }

    /** The place set first, if one is. */
    Optional<Point> first() {
        return first;
    }

    /** Moves the hand, or the cross. */
    void move(Point to) {
        at = to;
    }

    void press(Point place) {
        at = place;
        pressed = true;
        if (first.isEmpty()) {
            first = Optional.of(place);
        }
    }

    /** The line, if the hand let go at its end; a first click sets a place only. */
    Optional<Line> release(Point place) {
        at = place;
        boolean letGo = pressed;
        pressed = false;
        return letGo ? line() : Optional.empty();
    }

    /** Sets the place under the cross; the line, if it is the second. */
    Optional<Line> set() {
        if (first.isEmpty()) {
            first = Optional.of(at);
            return Optional.empty();
        }
        return line();
    }

    private Optional<Line> line() {
        return first.filter(from -> from.distance(at) >= CLICK).map(from -> new Line(from, at));
    }
}
