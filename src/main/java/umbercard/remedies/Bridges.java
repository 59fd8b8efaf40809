package umbercard.remedies;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import umbercard.door.Plan;
import umbercard.geometry.Mass;
import umbercard.geometry.NearPair;
import umbercard.geometry.Region;
import umbercard.geometry.Swelling;

/**
 * What fills gaps between masses of one value: of the places that closing with a disc adds, those that touch two masses which
 * nothing smaller joins yet. So bays stay open, and no light is walled in by a second bridge between the same darks.
 */
final class Bridges {
    /** What touches may be apart by, from rounding to the grid. */
    private static final double TOUCH = 1e-6;

    private final List<Region> masses;
    private final int[] group;

    private Bridges(List<Region> masses) {
        this.masses = masses;
        group = IntStream.range(0, masses.size()).toArray();
    }

    /**
     * The bridges over gaps narrower than a width; each reaches a hair into what it joins.
     *
     * @param width in units
     * @param hair in units
     */
    static List<Region> of(Plan plan, Value value, double width, double hair) {
        Region whole = value.of(plan.design());
        Region frame = plan.design().frame();
        List<Region> added = Swelling.closed(whole, width)
                .map(closed -> closed.intersect(frame).minus(whole).pieces())
                .orElse(List.of());
        Bridges bridges =
                new Bridges(value.masses(plan).stream().map(Mass::region).toList());
        return bridges.among(added).stream()
                .map(bridge -> Swelling.of(bridge, hair).orElse(bridge).intersect(whole.union(bridge)))
                .toList();
    }

    private List<Region> among(List<Region> added) {
        List<Region> all = new ArrayList<>(masses);
        all.addAll(added);
        List<Set<Integer>> touched = added.stream()
                .map(piece -> (Set<Integer>) new TreeSet<Integer>())
                .toList();
        for (NearPair pair : NearPair.within(all, TOUCH)) {
            if (pair.one() < masses.size() && pair.other() >= masses.size()) {
                touched.get(pair.other() - masses.size()).add(pair.one());
            }
        }
        return IntStream.range(0, added.size())
                .boxed()
                .sorted(Comparator.comparingDouble(piece -> added.get(piece).area()))
                .filter(piece -> joins(touched.get(piece)))
                .map(added::get)
                .toList();
    }

    /** Whether the masses of some places were not all joined yet; they are from now on. */
    private boolean joins(Set<Integer> places) {
        Set<Integer> groups = places.stream().map(place -> group[place]).collect(Collectors.toCollection(TreeSet::new));
        if (groups.size() < 2) {
            return false;
        }
        int one = groups.iterator().next();
        for (int i = 0; i < group.length; i++) {
            group[i] = groups.contains(group[i]) ? one : group[i];
        }
        return true;
    }
}
