package umbercard.photo;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;

/**
 * The masses of dark and light that a split makes, and the merging of small ones into what surrounds them. Neighbors are
 * always of the other value, so a mass that gives in joins all that it touched. Nodes are taken in {@link Runs}, which makes
 * a count cheap enough to look for a split by trying many.
 */
final class Masses {
    private final Lattice lattice;
    private final Runs runs;
    private final int[] index;
    private final Mass[] of;
    private int count;

    /**
     * What may be left.
     *
     * @param most masses of dark and light together, 1 or more
     * @param least an area in frame units; a mass that is narrower throughout than a disc of half of it is, is too small
     *     as well, however long: painters call that a sliver
     */
    record Limits(int most, double least) {
        private boolean allow(Mass mass) {
            // A disc's area over its border is r/2, so this is the area of the disc that is as wide as the mass.
            double width = mass.area / mass.border;
            return mass.area >= least && 4 * Math.PI * width * width >= least / 2;
        }
    }

    private Masses(Lattice lattice, double split) {
        this.lattice = lattice;
        runs = new Runs(lattice, split);
        index = new int[runs.count()];
        of = measure();
        count = of.length;
    }

    /**
     * The masses once no more are left than the limits allow.
     *
     * @param split a luminance: what lies below it is dark
     */
    static Masses of(Lattice lattice, double split, Limits limits) {
        Masses masses = new Masses(lattice, split);
        masses.merge(limits);
        return masses;
    }

    /** What they were made of. */
    Lattice lattice() {
        return lattice;
    }

    /** How many there are, dark and light together. */
    int count() {
        return count;
    }

    /** The share of the frame that is dark, 0..1, to a part of a sample's area. */
    double darkShare() {
        double dark = 0;
        for (int run = 0; run < index.length; run++) {
            dark += of[index[run]].dark ? runs.area(run) : 0;
        }
        return dark / lattice.ratio();
    }

    /** Which nodes are dark. */
    boolean[] dark() {
        boolean[] dark = new boolean[lattice.size()];
        for (int run = 0; run < index.length; run++) {
            Arrays.fill(dark, runs.start(run), runs.end(run), of[index[run]].dark);
        }
        return dark;
    }

    private void merge(Limits limits) {
        PriorityQueue<Turn> turns = new PriorityQueue<>();
        for (Mass mass : of) {
            turns.add(Turn.of(mass, limits));
        }
        while (count > 1) {
            Turn turn = turns.remove();
            Mass mass = turn.mass;
            if (of[mass.id] != mass || turn.area != mass.area) {
                continue;
            }
            if (count <= limits.most && turn.allowed) {
                break;
            }
            count -= mass.neighbors.size();
            turns.add(Turn.of(giveIn(mass), limits));
        }
    }

    /** When a mass gives in: those that are too small first, then by area. A mass that has grown gets another turn. */
    private record Turn(Mass mass, boolean allowed, double area) implements Comparable<Turn> {
        private static final Comparator<Turn> ORDER = Comparator.comparing(Turn::allowed)
                .thenComparingDouble(Turn::area)
                .thenComparingInt(turn -> turn.mass.id);

        static Turn of(Mass mass, Limits limits) {
            return new Turn(mass, limits.allow(mass), mass.area);
        }

        @Override
        public int compareTo(Turn other) {
            return ORDER.compare(this, other);
        }
    }

    /** The masses in the order of their first runs; {@code index} tells each run's. */
    private Mass[] measure() {
        List<Mass> masses = new ArrayList<>();
        for (int run = 0; run < index.length; run++) {
            int root = runs.root(run);
            if (root == run) {
                masses.add(new Mass(masses.size(), runs.isDark(run)));
                index[run] = masses.size() - 1;
            } else {
                // A root is the first of its runs, so it has its number by now.
                index[run] = index[root];
            }
            masses.get(index[run]).area += runs.area(run);
        }
        Mass[] all = masses.toArray(Mass[]::new);
        runs.eachBorder((one, other, length) -> {
            meet(all[index[one]], all[index[other]], length);
            meet(all[index[other]], all[index[one]], length);
        });
        return all;
    }

    private static void meet(Mass one, Mass other, double length) {
        one.neighbors.merge(other, length, Double::sum);
        one.border += length;
    }

    /** The mass and its neighbors become one, which is of their value: the neighbor that touches most takes in the others. */
    private Mass giveIn(Mass mass) {
        Mass whole = Collections.max(
                mass.neighbors.keySet(),
                Comparator.<Mass>comparingInt(neighbor -> neighbor.neighbors.size())
                        .thenComparingInt(neighbor -> -neighbor.id));
        List<Mass> parts = new ArrayList<>(mass.neighbors.keySet());
        parts.remove(whole);
        parts.add(mass);
        for (Mass part : parts) {
            part.neighbors.forEach((neighbor, length) -> {
                neighbor.border -= neighbor.lose(part);
                if (neighbor != whole && neighbor != mass && part != mass) {
                    meet(whole, neighbor, length);
                    meet(neighbor, whole, length);
                }
            });
            whole.area += part.area;
            whole.places.addAll(part.places);
            part.places.forEach(place -> of[place] = whole);
        }
        return whole;
    }

    /** A connected region of one value; regions that became one share their places in the list. */
    private static final class Mass {
        final int id;
        final boolean dark;
        final Map<Mass, Double> neighbors = new LinkedHashMap<>();
        final List<Integer> places = new ArrayList<>();
        double area;
        double border;

        Mass(int id, boolean dark) {
            this.id = id;
            this.dark = dark;
            places.add(id);
        }

        /** Forgets a neighbor and gives the length of the border with it. */
        double lose(Mass neighbor) {
            Double length = neighbors.remove(neighbor);
            return length == null ? 0 : length;
        }
    }
}
