package umbercard.desk.canvas;

import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Stream;
import umbercard.geometry.Node;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;

/** Where two states of a thumbnail's marks look different: rectangles outside which nothing has to be drawn anew. */
final class Windows {
    /** Nothing: what it is added to stays as it is. */
    private static final Rectangle2D NOWHERE = new Rectangle2D.Double(0, 0, -1, -1);

    private Windows() {}

    /** The marks that are drawn. */
    static List<Mark> visible(Thumbnail thumbnail) {
        return thumbnail.marks().stream().filter(mark -> !mark.hidden()).toList();
    }

    /** Whether two marks draw the same. */
    static boolean alike(Mark one, Mark two) {
        return one.equals(two) || (one.kind() == two.kind() && one.outline().equals(two.outline()));
    }

    /** How many marks at the start draw the same. */
    static int alikeAtStart(List<Mark> old, List<Mark> now) {
        int most = Math.min(old.size(), now.size());
        int same = 0;
        while (same < most && alike(old.get(same), now.get(same))) {
            same++;
        }
        return same;
    }

    /** How many marks at the end draw the same, not counting the first {@code start}. */
    static int alikeAtEnd(List<Mark> old, List<Mark> now, int start) {
        int most = Math.min(old.size(), now.size()) - start;
        int same = 0;
        while (same < most && alike(old.get(old.size() - 1 - same), now.get(now.size() - 1 - same))) {
            same++;
        }
        return same;
    }

    /**
     * Where the visible marks look different, in frame units: where the changed ones were as well as where they are. Empty
     * where nothing changed.
     */
    static Rectangle2D between(List<Mark> old, List<Mark> now) {
        int start = alikeAtStart(old, now);
        int end = alikeAtEnd(old, now, start);
        List<Mark> were = old.subList(start, old.size() - end);
        List<Mark> are = now.subList(start, now.size() - end);
        Rectangle2D window = NOWHERE;
        if (were.size() == are.size()) {
            for (int i = 0; i < were.size(); i++) {
                window = union(window, between(were.get(i), are.get(i)));
            }
            return window;
        }
        return Stream.concat(were.stream(), are.stream())
                .map(mark -> around(mark.outline()))
                .reduce(window, Windows::union);
    }

    /**
     * Where one mark in two states looks different. Two outlines that share all but a run of segments fill alike outside the
     * rectangle round those: there the closed curve of the one run and the other backwards winds round nothing.
     */
    private static Rectangle2D between(Mark was, Mark is) {
        if (alike(was, is)) {
            return NOWHERE;
        }
        List<Node> old = was.outline().nodes();
        List<Node> now = is.outline().nodes();
        if (was.kind() != is.kind() || old.size() != now.size()) {
            return union(around(was.outline()), around(is.outline()));
        }
        Rectangle2D window = NOWHERE;
        for (int i = 0; i < now.size(); i++) {
            int next = (i + 1) % now.size();
            if (!old.get(i).equals(now.get(i)) || !old.get(next).equals(now.get(next))) {
                window = union(window, around(old.get(i), old.get(next)));
                window = union(window, around(now.get(i), now.get(next)));
            }
        }
        return window;
    }

    private static Rectangle2D around(Node from, Node to) {
        return around(Stream.of(from.at(), from.out(), to.in(), to.at()));
    }

    private static Rectangle2D around(Outline outline) {
        return around(outline.nodes().stream().flatMap(node -> Stream.of(node.in(), node.at(), node.out())));
    }

    private static Rectangle2D around(Stream<Point> points) {
        return points.map(Windows::at).reduce(NOWHERE, Windows::union);
    }

    private static Rectangle2D at(Point point) {
        return new Rectangle2D.Double(point.x(), point.y(), 0, 0);
    }

    /** The rectangle round both; one that is {@link #isNowhere nowhere} adds nothing. */
    static Rectangle2D union(Rectangle2D one, Rectangle2D two) {
        return isNowhere(one) ? two : isNowhere(two) ? one : one.createUnion(two);
    }

    static boolean isNowhere(Rectangle2D window) {
        return window.getWidth() < 0;
    }

    /** All pixels that a window may tint, its smooth edge with it. */
    static Rectangle pixels(Rectangle2D window, double scale) {
        if (isNowhere(window)) {
            return new Rectangle();
        }
        int left = (int) Math.floor(window.getMinX() * scale) - 1;
        int top = (int) Math.floor(window.getMinY() * scale) - 1;
        int right = (int) Math.ceil(window.getMaxX() * scale) + 1;
        int bottom = (int) Math.ceil(window.getMaxY() * scale) + 1;
        return new Rectangle(left, top, right - left, bottom - top);
    }
}
