package umbercard.photo;

import java.util.ArrayList;
import java.util.List;
import umbercard.geometry.Node;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;

/**
 * Lets an outline that closes along the frame run a little beyond it, square to the side, as a painter's mark runs over the
 * tape. Within the frame nothing changes, so the share does not either; but no hair of bare card shows along the side when the
 * card is drawn, and a point that is moved there later does not open a gap at once.
 */
final class Overrun {
    /** How far, in frame units: common practice, no source. */
    static final double WIDTH = 0.01;

    private final double ratio;
    private final List<Node> beyond = new ArrayList<>();

    private Overrun(double ratio) {
        this.ratio = ratio;
    }

    /** The outline, no part of it outside the frame, with its stretches along the frame's sides moved out. */
    static Outline of(Outline within, double ratio) {
        Overrun overrun = new Overrun(ratio);
        List<Node> nodes = within.nodes();
        for (int i = 0; i < nodes.size(); i++) {
            Node before = nodes.get((i + nodes.size() - 1) % nodes.size());
            overrun.add(before, nodes.get(i), nodes.get((i + 1) % nodes.size()));
        }
        return new Outline(overrun.beyond);
    }

    private void add(Node before, Node node, Node after) {
        Point arriving = outward(before, node);
        Point leaving = outward(node, after);
        boolean arrives = isAway(arriving);
        boolean leaves = isAway(leaving);
        if (arrives && leaves) {
            // A corner of the frame, or a point in the middle of a side.
            boolean corner = !arriving.equals(leaving);
            beyond.add(out(node, corner ? arriving.plus(leaving.x(), leaving.y()) : arriving));
        } else if (arrives) {
            beyond.add(out(node, arriving));
            beyond.add(node);
        } else if (leaves) {
            beyond.add(node);
            beyond.add(out(node, leaving));
        } else {
            beyond.add(node);
        }
    }

    private static Node out(Node node, Point outward) {
        return Node.sharp(node.at().plus(WIDTH * outward.x(), WIDTH * outward.y()));
    }

    private static boolean isAway(Point outward) {
        return outward.x() != 0 || outward.y() != 0;
    }

    /** The unit direction out of the side that a straight segment runs along; nothing if it runs along none. */
    private Point outward(Node from, Node to) {
        boolean straight = from.out().equals(from.at()) && to.in().equals(to.at());
        if (!straight) {
            return new Point(0, 0);
        }
        double x = both(from.at().x(), to.at().x(), 0)
                ? -1
                : both(from.at().x(), to.at().x(), ratio) ? 1 : 0;
        double y = both(from.at().y(), to.at().y(), 0)
                ? -1
                : both(from.at().y(), to.at().y(), 1) ? 1 : 0;
        return new Point(x, y);
    }

    private static boolean both(double one, double other, double side) {
        return one == side && other == side;
    }
}
