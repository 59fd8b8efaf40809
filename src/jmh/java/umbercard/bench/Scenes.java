package umbercard.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.geometry.Strokes;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;

/** Random drawings of many marks, the same for the same numbers. */
public final class Scenes {
    /** The frame of a 12 × 9 in surface with ¼ in of tape. */
    public static final double RATIO = 11.5 / 8.5;

    /** Radii of ordinary marks, in frame units. */
    private static final double LEAST = .04;

    private static final double MOST = .16;

    /** Of a mass that covers over a third of the frame: π · .41² = .53 of 1.35. */
    private static final double MASS = .41;

    private Scenes() {}

    /** Which mark of the drawing is dragged. */
    public enum Dragged {
        /** One like the others. */
        ORDINARY,
        /** One that covers over a third of the frame. */
        MASS
    }

    /** A light card with marks anywhere on the frame or a little over its border, two of three laid, the others lifted. */
    public static Thumbnail thumbnail(int marks, int nodes, Dragged dragged) {
        Random random = new Random(1000L * nodes + marks);
        List<Mark> all = new ArrayList<>();
        for (int i = 0; i < marks; i++) {
            Point center = new Point(RATIO * random.nextDouble(), random.nextDouble());
            double radius = LEAST + (MOST - LEAST) * random.nextDouble();
            Mark.Kind kind = random.nextInt(3) > 0 ? Mark.Kind.LAY : Mark.Kind.LIFT;
            all.add(new Mark("m" + (i + 1), kind, blob(random, nodes, center, radius)));
        }
        if (dragged == Dragged.MASS) {
            Outline mass = blob(random, nodes, new Point(RATIO / 2, .5), MASS);
            all.set(place(marks), all.get(place(marks)).withKind(Mark.Kind.LAY).withOutline(mass));
        }
        return Thumbnail.empty("t1", "many").withMarks(all);
    }

    /** The place of the dragged mark: in the middle of the order. */
    public static int place(int marks) {
        return marks / 2;
    }

    /** A round mark with an uneven border, as a hand draws it: long waves, and a tremor of one part in a hundred. */
    private static Outline blob(Random random, int nodes, Point center, double radius) {
        double[] high = new double[6];
        double[] phase = new double[high.length];
        for (int wave = 0; wave < high.length; wave++) {
            high[wave] = .16 * random.nextDouble() / (wave + 1);
            phase[wave] = 2 * Math.PI * random.nextDouble();
        }
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < nodes; i++) {
            double angle = 2 * Math.PI * i / nodes;
            double r = 1 + .01 * random.nextGaussian();
            for (int wave = 0; wave < high.length; wave++) {
                r += high[wave] * Math.cos((wave + 2) * angle + phase[wave]);
            }
            points.add(center.plus(radius * r * Math.cos(angle), radius * r * Math.sin(angle)));
        }
        return Strokes.curved(points);
    }

    /** The thumbnail after the {@code step}th event of a drag that carries its mark round a small circle. */
    public static Thumbnail dragged(Thumbnail thumbnail, int step) {
        return dragged(thumbnail, place(thumbnail.marks().size()), step);
    }

    /** The same for the mark at another place in the order. */
    static Thumbnail dragged(Thumbnail thumbnail, int place, int step) {
        double angle = step * .37;
        double by = .02;
        List<Mark> marks = new ArrayList<>(thumbnail.marks());
        Mark mark = marks.get(place);
        marks.set(
                place,
                mark.withOutline(mark.outline().mapped(p -> p.plus(by * Math.cos(angle), by * Math.sin(angle)))));
        return thumbnail.withMarks(marks);
    }
}
