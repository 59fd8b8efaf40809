package umbercard.notan;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import umbercard.geometry.Outline;
import umbercard.geometry.Region;
import umbercard.geometry.Rows;
import umbercard.geometry.Strokes;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;

/** Thumbnails for tests, and two other ways to fold them. */
final class Drawings {
    private Drawings() {}

    static Mark mark(Mark.Kind kind, Outline outline) {
        return new Mark("m", kind, outline);
    }

    static Thumbnail thumbnail(Thumbnail.Ground ground, List<Mark> marks) {
        return Thumbnail.empty("t", "test").withGround(ground).withMarks(marks);
    }

    /** Strokes that cross themselves, near-copies, slivers, spikes and shared edges, laid and lifted, one in ten hidden. */
    static List<Mark> marks(Random random, int n) {
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Mark.Kind kind = random.nextInt(3) > 0 ? Mark.Kind.LAY : Mark.Kind.LIFT;
            marks.add(mark(kind, outline(random, marks)).withHidden(random.nextInt(10) == 0));
        }
        return marks;
    }

    private static Outline outline(Random random, List<Mark> others) {
        int choice = random.nextInt(10);
        if (choice < 3 && !others.isEmpty()) {
            Outline copied = others.get(random.nextInt(others.size())).outline();
            return Strokes.shaken(copied, random, Math.pow(10, -4 - 8 * random.nextDouble()));
        }
        return choice < 5
                ? Strokes.awkward(random)
                : choice < 8
                        ? Strokes.wandering(random, 3 + random.nextInt(40), .1 + .8 * random.nextDouble())
                        : Strokes.blob(random, 3 + random.nextInt(20), .05 + .3 * random.nextDouble());
    }

    /** One overlay a mark, in order. */
    static Region naive(Thumbnail thumbnail, double ratio) {
        Region frame = Region.rectangle(0, 0, ratio, 1);
        Region dark = thumbnail.ground() == Thumbnail.Ground.DARK ? frame : Region.empty();
        for (Mark mark : thumbnail.marks()) {
            if (!mark.hidden()) {
                Region shape = Region.of(mark.outline());
                dark = mark.kind() == Mark.Kind.LAY ? dark.union(shape) : dark.minus(shape);
            }
        }
        return dark.intersect(frame);
    }

    /** The dark length of the row at {@code y}, by spans of the drawn curves; no overlay takes part. */
    static double row(Thumbnail thumbnail, double ratio, double y) {
        List<Rows.Span> dark =
                thumbnail.ground() == Thumbnail.Ground.DARK ? List.of(new Rows.Span(0, ratio)) : List.of();
        for (Mark mark : thumbnail.marks()) {
            if (!mark.hidden()) {
                List<Rows.Span> spans = Rows.filled(List.of(mark.outline()), y);
                dark = mark.kind() == Mark.Kind.LAY ? Rows.union(dark, spans) : Rows.minus(dark, spans);
            }
        }
        return Rows.length(dark, ratio);
    }
}
