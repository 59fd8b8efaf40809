package umbercard.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * A closed curve of cubic Bézier segments and lines; the last node joins the first. It fills by the non-zero rule, as
 * ink does, so it may cross itself. Fewer than two nodes enclose nothing.
 */
public record Outline(List<Node> nodes) {
    public Outline {
        nodes = List.copyOf(nodes);
    }

    /** A straight-sided outline through the points, in order. */
    public static Outline polygon(List<Point> points) {
        return new Outline(points.stream().map(Node::sharp).toList());
    }

    /** The rectangle with the two opposite corners. */
    public static Outline rectangle(double left, double top, double right, double bottom) {
        return polygon(List.of(
                new Point(left, top), new Point(right, top), new Point(right, bottom), new Point(left, bottom)));
    }

    /** The segments in order, the closing one last; empty for fewer than two nodes. */
    public List<Cubic> segments() {
        if (nodes.size() < 2) {
            return List.of();
        }
        List<Cubic> segments = new ArrayList<>(nodes.size());
        for (int i = 0; i < nodes.size(); i++) {
            Node from = nodes.get(i);
            Node to = nodes.get((i + 1) % nodes.size());
            segments.add(new Cubic(from.at(), from.out(), to.in(), to.at()));
        }
        return List.copyOf(segments);
    }

    /**
     * Area and moments about the origin of the drawn curve itself, in closed form. For an outline that does not cross itself
     * they are those of what it fills, whichever way it runs. One that does is summed by winding numbers: a part that it winds
     * round twice counts double, parts that it winds round in opposite ways cancel (a bow-tie's area is 0). The sum's sign is
     * chosen so that the area is 0 or more. What ink fills then is {@link Region#moments()}.
     */
    public Moments moments() {
        Moments signed = Green.moments(segments());
        return signed.area() < 0 ? signed.times(-1) : signed;
    }

    /** Every point and pull carried by {@code map}; exact for affine maps only. */
    public Outline mapped(UnaryOperator<Point> map) {
        return new Outline(nodes.stream()
                .map(node -> new Node(map.apply(node.at()), map.apply(node.in()), map.apply(node.out()), node.round()))
                .toList());
    }
}
