package umbercard.remedies;

import java.util.List;
import java.util.Optional;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.geometry.Region;

/** Lets what nearly meets meet: a short strip over each gap, wide enough that what it parts does not nearly meet across it. */
public final class JoinTangents extends MendTangents {
    /** The strip's width, in gaps that are just too near. */
    private static final double WIDTH = 1.5;

    @Override
    public String id() {
        return "join-tangents";
    }

    @Override
    public int rank() {
        return 400;
    }

    @Override
    Value given(Miss miss) {
        return miss.value();
    }

    @Override
    Optional<Region> patch(Draft draft, Miss miss) {
        Point from = miss.gap().from();
        Point to = miss.gap().to();
        double length = miss.gap().distance();
        double over = draft.hair() / length;
        Point start = from.toward(to, -over);
        Point end = from.toward(to, 1 + over);
        double aside = WIDTH * miss.reach() / 2 / length;
        double x = aside * (to.y() - from.y());
        double y = aside * (from.x() - to.x());
        return Optional.of(Region.of(
                Outline.polygon(List.of(start.plus(x, y), start.plus(-x, -y), end.plus(-x, -y), end.plus(x, y)))));
    }
}
