package umbercard.cards.faces;

import java.util.ArrayList;
import java.util.List;
import umbercard.door.Drawing;
import umbercard.geometry.Point;
import umbercard.model.ColorNote.Direction;
import umbercard.model.ColorNote.Touch;

/** A few strokes in the direction that the stick is to move, thin for a light touch and thick for a firm one. */
public final class Hatch {
    private static final double SPACING = 1.15;
    private static final double THIN = 0.22;
    private static final double THICK = 0.5;

    /** How far a slanting stroke leans over its height. */
    private static final double LEAN = 0.6;

    private static final int ARC_STEPS = 12;

    private Hatch() {}

    static void draw(Drawing drawing, Direction direction, Touch touch, Box box) {
        for (List<Point> stroke : strokes(direction, box)) {
            drawing.line(stroke, thickness(touch), Ink.WORDS);
        }
    }

    /**
     * The strokes as they are printed, for a field with its upper left corner at 0, 0.
     *
     * @param width in millimeters, as is the height
     * @return a line each, from its beginning to its end
     */
    public static List<List<Point>> strokes(Direction direction, double width, double height) {
        return strokes(direction, new Box(0, 0, width, height));
    }

    /** How thick a stroke is printed, in millimeters. */
    public static double thickness(Touch touch) {
        return touch == Touch.FIRM ? THICK : THIN;
    }

    static List<List<Point>> strokes(Direction direction, Box box) {
        return switch (direction) {
            case FLAT -> flat(box);
            case UPRIGHT -> leaning(box, 0);
            case SLANT_RIGHT -> leaning(box, LEAN * box.height());
            case SLANT_LEFT -> leaning(box, -LEAN * box.height());
            case ALONG_FORM -> arcs(box);
        };
    }

    private static List<List<Point>> flat(Box box) {
        int count = (int) Math.floor(box.height() / SPACING) + 1;
        double step = box.height() / count;
        List<List<Point>> strokes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double y = box.top() + (i + 0.5) * step;
            strokes.add(List.of(new Point(box.left(), y), new Point(box.right(), y)));
        }
        return strokes;
    }

    /** From the foot of the box to its top, leaning to the right by {@code lean}. */
    private static List<List<Point>> leaning(Box box, double lean) {
        double room = box.width() - Math.abs(lean);
        int gaps = Math.max(1, (int) Math.floor(room / SPACING));
        double start = box.left() + Math.max(0, -lean);
        List<List<Point>> strokes = new ArrayList<>();
        for (int i = 0; i <= gaps; i++) {
            double foot = start + room * i / gaps;
            strokes.add(List.of(new Point(foot, box.bottom()), new Point(foot + lean, box.top())));
        }
        return strokes;
    }

    /** As over a round form: arcs one above the other. */
    private static List<List<Point>> arcs(Box box) {
        int count = Math.max(2, (int) Math.floor(box.height() / SPACING));
        double rise = box.height() / 2;
        List<List<Point>> strokes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double foot = box.bottom() - (box.height() - rise) * i / (count - 1);
            List<Point> arc = new ArrayList<>();
            for (int k = 0; k <= ARC_STEPS; k++) {
                double across = (double) k / ARC_STEPS;
                arc.add(new Point(box.left() + across * box.width(), foot - rise * 4 * across * (1 - across)));
            }
            strokes.add(arc);
        }
        return strokes;
    }
}
