package umbercard.notan;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import umbercard.geometry.Node;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
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

    /** Whether the last visible mark whose row holds the place lays dark, or none does and the ground is dark. */
    static boolean isDark(Thumbnail thumbnail, Point place) {
        for (int i = thumbnail.marks().size() - 1; i >= 0; i--) {
            Mark mark = thumbnail.marks().get(i);
            if (!mark.hidden()
                    && Rows.filled(List.of(mark.outline()), place.y()).stream()
                            .anyMatch(span -> span.from() < place.x() && place.x() < span.to())) {
                return mark.kind() == Mark.Kind.LAY;
            }
        }
        return thumbnail.ground() == Thumbnail.Ground.DARK;
    }

    /**
     * A drawing of a few marks of a few points, on any frame: cheap to fold, and as awkward as possible. Points lie on a coarse
     * lattice or anywhere; marks repeat each other, exactly or nearly. One in thirty has small curved marks, which cost far more.
     */
    static Drawing small(Random random) {
        double ratio = new double[] {1.25, 1, .75, 1.353, 2}[random.nextInt(5)];
        int lattice = random.nextInt(3) == 0 ? 0 : 2 + random.nextInt(8);
        List<Mark> marks = new ArrayList<>();
        boolean curved = random.nextInt(30) == 0;
        int n = 1 + random.nextInt(curved ? 3 : 4);
        for (int i = 0; i < n; i++) {
            Mark.Kind kind = random.nextInt(3) > 0 ? Mark.Kind.LAY : Mark.Kind.LIFT;
            marks.add(mark(kind, few(random, curved, lattice, marks)).withHidden(random.nextInt(20) == 0));
        }
        Thumbnail.Ground ground = random.nextInt(3) > 0 ? Thumbnail.Ground.LIGHT : Thumbnail.Ground.DARK;
        return Drawing.of("small", ratio, thumbnail(ground, marks));
    }

    private static Outline few(Random random, boolean curved, int lattice, List<Mark> others) {
        if (!others.isEmpty() && random.nextInt(3) == 0) {
            Outline copied = others.get(random.nextInt(others.size())).outline();
            double by = random.nextInt(4) == 0 ? 0 : Math.pow(10, -4 - 8 * random.nextDouble());
            Outline near = Strokes.shaken(random.nextBoolean() ? copied : reversed(copied), random, by);
            return curved ? near : straight(near);
        }
        if (random.nextInt(8) == 0) {
            return Strokes.awkward(random);
        }
        List<Point> points = new ArrayList<>();
        int n = 3 + random.nextInt(4);
        double size = curved ? .15 : random.nextInt(50) == 0 ? 1000 : 1.6;
        double left = curved ? random.nextDouble() : -size / 8;
        double top = curved ? random.nextDouble() : -size / 8;
        for (int i = 0; i < n; i++) {
            double x = left + size * random.nextDouble();
            double y = top + size * random.nextDouble();
            points.add(
                    lattice == 0
                            ? new Point(x, y)
                            : new Point(
                                    rounded(x, curved ? 16 * lattice : lattice),
                                    rounded(y, curved ? 16 * lattice : lattice)));
        }
        if (!curved) {
            return Outline.polygon(points);
        }
        return random.nextBoolean() ? Strokes.curved(points) : pulled(random, points);
    }

    private static Outline straight(Outline outline) {
        return Outline.polygon(outline.nodes().stream().map(Node::at).toList());
    }

    private static double rounded(double value, int lattice) {
        return Math.rint(value * lattice) / lattice;
    }

    private static Outline reversed(Outline outline) {
        List<Node> nodes = new ArrayList<>();
        outline.nodes().forEach(node -> nodes.add(0, node.reversed()));
        return new Outline(nodes);
    }

    /** Pulls that lie on other points: cusps, loops, and lines that run over themselves. */
    private static Outline pulled(Random random, List<Point> points) {
        List<Node> nodes = new ArrayList<>();
        for (Point at : points) {
            Point in = random.nextBoolean() ? at : points.get(random.nextInt(points.size()));
            Point out = random.nextBoolean() ? at : points.get(random.nextInt(points.size()));
            nodes.add(new Node(at, in, out, random.nextBoolean()));
        }
        return new Outline(nodes);
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
