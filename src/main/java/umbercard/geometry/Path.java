package umbercard.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** An open curve of cubic Bézier segments and lines: an eye path, or a stroke before it is closed. */
public record Path(List<Node> nodes) {
    public Path {
        nodes = List.copyOf(nodes);
    }

    /** A straight-sided path through the points, in order. */
    public static Path through(List<Point> points) {
        return new Path(points.stream().map(Node::sharp).toList());
    }

    /** The segments in order; empty for fewer than two nodes. */
    public List<Cubic> segments() {
        List<Cubic> segments = new ArrayList<>();
        for (int i = 1; i < nodes.size(); i++) {
            Node from = nodes.get(i - 1);
            Node to = nodes.get(i);
            segments.add(new Cubic(from.at(), from.out(), to.in(), to.at()));
        }
        return List.copyOf(segments);
    }

    /** Every point and pull carried by {@code map}; exact for affine maps only. */
    public Path mapped(UnaryOperator<Point> map) {
        return new Path(nodes.stream()
                .map(node -> new Node(map.apply(node.at()), map.apply(node.in()), map.apply(node.out()), node.round()))
                .toList());
    }
}
