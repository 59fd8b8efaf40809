package umbercard.remedies;

import java.util.List;
import java.util.Optional;
import umbercard.geometry.Mass;
import umbercard.geometry.Point;
import umbercard.geometry.Region;
import umbercard.geometry.Swelling;

/** Parts what nearly meets: takes a strip from the smaller mass, or from the one at the frame, so that the gap is wide enough. */
public final class PartTangents extends MendTangents {
    /** How wide a gap becomes, in gaps that are just too near. */
    private static final double WIDE = 1.1;

    private static final double TOUCH = 1e-6;

    @Override
    public String id() {
        return "part-tangents";
    }

    @Override
    public int rank() {
        return 410;
    }

    @Override
    Value given(Miss miss) {
        return miss.value().other();
    }

    @Override
    Optional<Region> patch(Draft draft, Miss miss) {
        Optional<Region> one = massAt(draft, miss, miss.gap().from());
        Optional<Region> other = massAt(draft, miss, miss.gap().to());
        if (one.isEmpty()) {
            return Optional.empty();
        }
        if (other.isEmpty()) {
            return strip(draft, miss, one.get(), beyond(draft, miss.gap().to()));
        }
        boolean smaller = one.get().area() < other.get().area();
        return strip(draft, miss, smaller ? one.get() : other.get(), smaller ? other.get() : one.get());
    }

    private static Optional<Region> massAt(Draft draft, Miss miss, Point place) {
        Region about = Region.rectangle(place.x() - TOUCH, place.y() - TOUCH, place.x() + TOUCH, place.y() + TOUCH);
        return miss.value().masses(draft.plan()).stream()
                .map(Mass::region)
                .filter(mass -> !mass.intersect(about).isEmpty())
                .findFirst();
    }

    /** What lies outside the frame beyond the side that a place is on. */
    private static Region beyond(Draft draft, Point place) {
        double ratio = draft.ratio();
        return List.of(
                        Region.rectangle(-1, -1, 0, 2),
                        Region.rectangle(ratio, -1, ratio + 1, 2),
                        Region.rectangle(-1, -1, ratio + 1, 0),
                        Region.rectangle(-1, 1, ratio + 1, 2))
                .stream()
                .filter(side -> side.contains(place))
                .findFirst()
                .orElse(Region.empty());
    }

    private static Optional<Region> strip(Draft draft, Miss miss, Region from, Region about) {
        return Swelling.of(about, WIDE * miss.reach())
                .map(near -> near.intersect(draft.without(from, miss.value())))
                .filter(strip -> !strip.isEmpty());
    }
}
