package umbercard.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Random drawing for properties: shaky strokes that cross themselves, curved and straight, from a seed. */
public final class Strokes {
    private Strokes() {}

    /** A closed wandering of {@code n} points, about {@code size} across; it crosses itself as a rule. */
    public static Outline wandering(Random random, int n, double size) {
        double cx = random.nextDouble() * 1.4;
        double cy = random.nextDouble() * 1.1;
        List<Point> points = new ArrayList<>();
        double heading = 0;
        double x = cx;
        double y = cy;
        for (int i = 0; i < n; i++) {
            heading += (random.nextDouble() - .4) * 2;
            x += Math.cos(heading) * size / 4;
            y += Math.sin(heading) * size / 4;
            points.add(new Point(x, y));
        }
        return random.nextBoolean() ? Outline.polygon(points) : curved(points);
    }

    /** A blob of {@code n} nodes with an uneven border. */
    public static Outline blob(Random random, int n, double size) {
        double cx = random.nextDouble() * 1.4;
        double cy = random.nextDouble() * 1.1;
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double angle = 2 * Math.PI * i / n;
            double r = size * (.7 + .3 * random.nextDouble());
            points.add(new Point(cx + r * Math.cos(angle), cy + r * Math.sin(angle)));
        }
        return curved(points);
    }

    /** A smooth outline through the points: each pull lies along the line between its neighbors. */
    public static Outline curved(List<Point> points) {
        List<Node> nodes = new ArrayList<>();
        int n = points.size();
        for (int i = 0; i < n; i++) {
            Point before = points.get((i + n - 1) % n);
            Point at = points.get(i);
            Point after = points.get((i + 1) % n);
            double dx = (after.x() - before.x()) / 6;
            double dy = (after.y() - before.y()) / 6;
            nodes.add(new Node(at, at.plus(-dx, -dy), at.plus(dx, dy), true));
        }
        return new Outline(nodes);
    }

    /** A sliver, a spike, a shared edge, a point or a line: what trips overlays. */
    public static Outline awkward(Random random) {
        double x = random.nextInt(5) * .25;
        double y = random.nextInt(5) * .2;
        double tiny = Math.pow(10, -4 - 8 * random.nextDouble());
        return switch (random.nextInt(6)) {
            case 0 -> Shapes.polygon(x, y, x + 1, y + tiny, x + 1, y + .3, x, y + .3);
            case 1 -> Shapes.polygon(x, y, x + .9, y + .1, x, y + tiny);
            case 2 -> Shapes.polygon(x, y, x + .5, y, x + .5, y + .4, x + .5, y + .9, x + .5, y + .4, x, y + .4);
            case 3 -> Shapes.polygon(x, y, x + .25, y, x + .25, y + .2, x, y + .2);
            case 4 -> Shapes.polygon(x, y, x + .5, y + .5);
            default -> Shapes.polygon(x, y, x + .5, y + .4, x + .5, y, x, y + .4);
        };
    }

    /** The same outline with every point moved by up to {@code by}. */
    public static Outline shaken(Outline outline, Random random, double by) {
        return outline.mapped(p -> p.plus((random.nextDouble() * 2 - 1) * by, (random.nextDouble() * 2 - 1) * by));
    }
}
