package umbercard.notan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.geometry.Rows;
import umbercard.geometry.Strokes;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;

/** Marks of very many nodes. */
final class LargeMarks {
    private static final int ROWS = 25;

    private LargeMarks() {}

    /** A scribble: a small circle carried round a large one, so that each loop crosses those beside it. */
    static Outline scribble(int nodes, int loops, double x, double y, double large, double small) {
        return Outline.polygon(scribbled(nodes, loops, x, y, large, small));
    }

    /** The same with a pull at every node. */
    static Outline curvedScribble(int nodes, int loops, double x, double y, double large, double small) {
        return Strokes.curved(scribbled(nodes, loops, x, y, large, small));
    }

    private static List<Point> scribbled(int nodes, int loops, double x, double y, double large, double small) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < nodes; i++) {
            double angle = 2 * Math.PI * i / nodes;
            points.add(new Point(
                    x + large * Math.cos(angle) + small * Math.cos(loops * angle),
                    y + large * Math.sin(angle) + small * Math.sin(loops * angle)));
        }
        return points;
    }

    /** A border that waves in and out and does not cross itself. */
    static Outline wavy(int nodes, double x, double y, double radius) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < nodes; i++) {
            double angle = 2 * Math.PI * i / nodes;
            double r = radius * (1 + .1 * Math.sin(700 * angle));
            points.add(new Point(x + r * Math.cos(angle), y + r * Math.sin(angle)));
        }
        return Outline.polygon(points);
    }

    /** Checks a fold against rows of the drawn curves, each alone within {@code each} and all in the mean within {@code mean}. */
    static void check(double mean, Mark... marks) {
        Thumbnail drawn = Drawings.thumbnail(Thumbnail.Ground.LIGHT, List.of(marks));
        double ratio = 1.25;
        List<Outline> dark = Fold.of(drawn, ratio).dark().outlines();
        double off = 0;
        for (int i = 0; i < ROWS; i++) {
            double y = (i + .5) / ROWS;
            off += Math.abs(Rows.length(Rows.filled(dark, y), ratio) - Drawings.row(drawn, ratio, y)) / ROWS;
        }
        assertThat(off).isCloseTo(0, within(mean));
    }
}
