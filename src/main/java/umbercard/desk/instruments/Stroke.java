package umbercard.desk.instruments;

import java.util.ArrayList;
import java.util.List;
import umbercard.door.Gesture;
import umbercard.geometry.Point;

/** What the hand does between a press and the release: a click, or once it has travelled, a line drawn freehand. */
final class Stroke {
    /** Points nearer than this, in screen pixels, are one in the preview. */
    private static final double COARSE_PIXELS = 2;

    /** So many points at most are previewed; what is made in the end follows every one. */
    private static final int COARSE_POINTS = 160;

    private final List<Point> raw = new ArrayList<>();
    private final List<Point> coarse = new ArrayList<>();
    private final int clicks;
    private final boolean secondButton;
    private boolean travelled;

    Stroke(Gesture press) {
        raw.add(press.at());
        coarse.add(press.at());
        clicks = press.clicks();
        secondButton = isSecond(press);
    }

    private static boolean isSecond(Gesture gesture) {
        return gesture.with().contains(Gesture.With.SECOND_BUTTON);
    }

    /** Whether a release is that of the button which began the stroke. */
    boolean endsWith(Gesture release) {
        return isSecond(release) == secondButton;
    }

    /** The hand moves on. */
    void to(Gesture drag) {
        Point at = drag.at();
        if (!at.equals(end())) {
            raw.add(at);
        }
        if (at.distance(coarse.get(coarse.size() - 1)) >= COARSE_PIXELS * drag.pixel()) {
            coarse.add(at);
        }
        travelled |= !Reach.isAt(drag, start());
    }

    /** Whether it is a line; otherwise it is a click so far. */
    boolean isLine() {
        return travelled;
    }

    /** Whether it is the second click of a double click, or a later one. */
    boolean isRepeated() {
        return clicks > 1;
    }

    Point start() {
        return raw.get(0);
    }

    Point end() {
        return raw.get(raw.size() - 1);
    }

    /** Every point of the line, none twice in a row. */
    List<Point> raw() {
        return List.copyOf(raw);
    }

    /** Some points of the line, few enough to be shown while the hand moves; both ends among them. */
    List<Point> coarse() {
        int stride = 1 + coarse.size() / COARSE_POINTS;
        List<Point> some = new ArrayList<>();
        for (int i = 0; i < coarse.size(); i += stride) {
            some.add(coarse.get(i));
        }
        if (!end().equals(some.get(some.size() - 1))) {
            some.add(end());
        }
        return some;
    }
}
