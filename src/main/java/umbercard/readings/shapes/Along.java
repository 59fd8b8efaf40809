package umbercard.readings.shapes;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import umbercard.door.Plan;
import umbercard.geometry.Eye;
import umbercard.geometry.Gap;
import umbercard.geometry.Node;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.model.Level;

/** Borders between dark and light that run close along a horizon, but not on it, on the land edge, nor on the frame. */
final class Along {
    /** The most that a border may turn away from the horizon, as a slope, about 10 degrees: common practice, no source. */
    private static final double TURN = 0.18;

    /** What so nearly lies on a side of the frame lies on it. */
    private static final double HAIR = 1e-6;

    private final Plan plan;
    private final Level horizon;
    private final double least;
    private final double most;
    private final double run;
    private double length;
    private double nearest = Double.MAX_VALUE;
    private Point left = new Point(Double.MAX_VALUE, 0);
    private Point right = new Point(-Double.MAX_VALUE, 0);

    /**
     * @param gap how close is too close, as a share of the diagonal
     * @param run how long the borders must be together to catch the eye, as a share of the diagonal
     */
    Along(Plan plan, Level horizon, double gap, double run) {
        this.plan = plan;
        this.horizon = horizon;
        least = Eye.DEFAULT.widthIn(plan.design().ratio());
        most = gap * plan.diagonal();
        this.run = run * plan.diagonal();
    }

    /** The ends of what runs along it; empty where that is too short to tell. */
    Optional<Gap> found() {
        for (Outline ring : plan.design().dark().outlines()) {
            List<Node> nodes = ring.nodes();
            for (int i = 0; i < nodes.size(); i++) {
                add(nodes.get(i).at(), nodes.get((i + 1) % nodes.size()).at());
            }
        }
        return length >= run ? Optional.of(new Gap(left, right)) : Optional.empty();
    }

    /** How near the horizon they come, straight up or down, in units. */
    double nearest() {
        return nearest;
    }

    private void add(Point from, Point to) {
        double across = Math.abs(to.x() - from.x());
        double turned = Math.abs(above(horizon, to) - above(horizon, from));
        boolean close = isClose(from) && isClose(to);
        if (close && turned <= TURN * across && !isOnLand(from, to) && !isOnFrame(from, to)) {
            length += from.distance(to);
            nearest = Math.min(nearest, Math.min(distance(from), distance(to)));
            left = List.of(left, from, to).stream()
                    .min(Comparator.comparingDouble(Point::x))
                    .orElseThrow();
            right = List.of(right, from, to).stream()
                    .max(Comparator.comparingDouble(Point::x))
                    .orElseThrow();
        }
    }

    private double above(Level level, Point point) {
        return level.yAt(point.x(), plan.design().ratio()) - point.y();
    }

    private boolean isClose(Point point) {
        return distance(point) > least && distance(point) <= most;
    }

    private double distance(Point point) {
        return Math.abs(above(horizon, point));
    }

    private static boolean isOnFrame(Point from, Point to) {
        return Math.max(from.y(), to.y()) <= HAIR || Math.min(from.y(), to.y()) >= 1 - HAIR;
    }

    private boolean isOnLand(Point from, Point to) {
        return plan.thumbnail()
                .landEdge()
                .filter(land -> Math.abs(above(land, from)) <= least && Math.abs(above(land, to)) <= least)
                .isPresent();
    }
}
