package umbercard.geometry;

import java.util.ArrayList;
import java.util.List;

/** Shapes for tests: arcs as cubics, strokes and stars. */
public final class Shapes {
    private Shapes() {}

    /** Straight sides through x, y, x, y, ... */
    public static Outline polygon(double... xy) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new Point(xy[i], xy[i + 1]));
        }
        return Outline.polygon(points);
    }

    /** Straight sides through {@code n} points of the unit circle, each {@code step} of them on from the last. */
    public static Outline star(int n, int step) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double angle = 2 * Math.PI * i * step / n;
            points.add(new Point(Math.cos(angle), Math.sin(angle)));
        }
        return Outline.polygon(points);
    }

    /** An ellipse of {@code pieces} cubics with its axes upright and level. */
    public static Outline ellipse(double cx, double cy, double rx, double ry, int pieces) {
        List<Node> nodes = arc(0, 0, 1, 0, 2 * Math.PI, pieces);
        Node last = nodes.remove(nodes.size() - 1);
        nodes.set(0, new Node(nodes.get(0).at(), last.in(), nodes.get(0).out(), true));
        return new Outline(nodes).mapped(p -> new Point(cx + rx * p.x(), cy + ry * p.y()));
    }

    /**
     * A circular arc of cubics whose pulls are 4/3 tan(angle/4) radii long; 16 a quarter turn are off by under 1e-11 of the
     * area.
     */
    public static List<Node> arc(double cx, double cy, double r, double from, double to, int pieces) {
        List<Node> nodes = new ArrayList<>();
        double pull = 4.0 / 3 * Math.tan((to - from) / pieces / 4) * r;
        for (int i = 0; i <= pieces; i++) {
            double angle = from + (to - from) * i / pieces;
            double x = cx + r * Math.cos(angle);
            double y = cy + r * Math.sin(angle);
            double dx = -pull * Math.sin(angle);
            double dy = pull * Math.cos(angle);
            Point at = new Point(x, y);
            nodes.add(new Node(
                    at, i == 0 ? at : new Point(x - dx, y - dy), i == pieces ? at : new Point(x + dx, y + dy), true));
        }
        return nodes;
    }

    /** Runs of nodes, one after the other, as one outline; a node that repeats the place before it is joined to it. */
    @SafeVarargs
    public static Outline joined(List<Node>... runs) {
        List<Node> all = new ArrayList<>();
        for (List<Node> run : runs) {
            for (Node node : run) {
                int last = all.size() - 1;
                if (last >= 0 && all.get(last).at().distance(node.at()) < 1e-12) {
                    all.set(last, new Node(all.get(last).at(), all.get(last).in(), node.out(), false));
                } else {
                    all.add(node);
                }
            }
        }
        int last = all.size() - 1;
        if (all.get(last).at().distance(all.get(0).at()) < 1e-12) {
            all.set(0, new Node(all.get(0).at(), all.get(last).in(), all.get(0).out(), false));
            all.remove(last);
        }
        return new Outline(all);
    }

    /** The same outline run the other way round. */
    public static Outline reversed(Outline outline) {
        List<Node> nodes = new ArrayList<>();
        outline.nodes().forEach(node -> nodes.add(0, node.reversed()));
        return new Outline(nodes);
    }
}
