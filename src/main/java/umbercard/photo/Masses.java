package umbercard.photo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.PriorityQueue;
import java.util.Set;

/**
 * The masses of dark and light that a split makes, and the merging of small ones into what surrounds them. Neighbors are
 * always of the other value, so a mass that gives in joins all that it touched.
 */
final class Masses {
    private final Lattice lattice;
    private final double split;
    private final boolean[] dark;
    private final int[] parent;

    private Masses(Lattice lattice, double split) {
        this.lattice = lattice;
        this.split = split;
        dark = new boolean[lattice.size()];
        parent = new int[lattice.size()];
        for (int node = 0; node < dark.length; node++) {
            dark[node] = lattice.sample(node) < split;
            parent[node] = node;
        }
    }

    /**
     * Which nodes are dark once at most {@code most} masses are left, none of them under {@code least}.
     *
     * @param split a luminance: what lies below it is dark
     * @param least an area in frame units
     */
    static boolean[] dark(Lattice lattice, double split, int most, double least) {
        Masses masses = new Masses(lattice, split);
        masses.join();
        masses.merge(most, least);
        return masses.dark;
    }

    private void join() {
        int columns = lattice.columns();
        for (int r = 0; r < lattice.rows(); r++) {
            for (int c = 0; c < columns; c++) {
                int node = r * columns + c;
                boolean right = c + 1 < columns;
                boolean below = r + 1 < lattice.rows();
                if (right && dark[node] == dark[node + 1]) {
                    unite(node, node + 1);
                }
                if (below && dark[node] == dark[node + columns]) {
                    unite(node, node + columns);
                }
                if (right && below) {
                    joinAcross(node, columns);
                }
            }
        }
    }

    /** Where two darks meet two lights in a cell's corners, its middle says which pair is joined. */
    private void joinAcross(int node, int columns) {
        boolean first = dark[node];
        if (dark[node + columns + 1] == first && dark[node + 1] != first && dark[node + columns] != first) {
            if (lattice.middleBelow(node, split) == first) {
                unite(node, node + columns + 1);
            } else {
                unite(node + 1, node + columns);
            }
        }
    }

    private void merge(int most, double least) {
        Map<Integer, Mass> masses = measure();
        PriorityQueue<Mass> smallest = new PriorityQueue<>(
                Comparator.<Mass>comparingDouble(mass -> mass.area).thenComparingInt(mass -> mass.id));
        smallest.addAll(masses.values());
        while (masses.size() > 1) {
            Mass mass = smallest.remove();
            if (masses.get(mass.id) != mass) {
                continue;
            }
            if (masses.size() <= most && mass.area >= least) {
                break;
            }
            smallest.add(giveIn(mass, masses));
        }
        for (int node = 0; node < dark.length; node++) {
            dark[node] = mass(masses, node).dark;
        }
    }

    private Mass mass(Map<Integer, Mass> masses, int node) {
        return masses.computeIfAbsent(find(node), id -> new Mass(id, dark[id]));
    }

    private Map<Integer, Mass> measure() {
        Map<Integer, Mass> masses = new HashMap<>();
        int columns = lattice.columns();
        for (int node = 0; node < dark.length; node++) {
            Mass mass = mass(masses, node);
            mass.area += lattice.weight(node);
            if (node % columns + 1 < columns) {
                meet(mass, mass(masses, node + 1));
            }
            if (node + columns < dark.length) {
                meet(mass, mass(masses, node + columns));
            }
        }
        return masses;
    }

    private static void meet(Mass one, Mass other) {
        if (one.dark != other.dark) {
            one.neighbors.add(other.id);
            other.neighbors.add(one.id);
        }
    }

    /** The mass takes the other value and becomes one with its neighbors. */
    private Mass giveIn(Mass mass, Map<Integer, Mass> masses) {
        List<Mass> parts = new ArrayList<>(List.of(mass));
        for (int id : mass.neighbors) {
            parts.add(of(masses, id));
        }
        Mass whole = new Mass(parts.stream().mapToInt(part -> part.id).min().orElseThrow(), !mass.dark);
        for (Mass part : parts) {
            whole.area += part.area;
            whole.neighbors.addAll(part.neighbors);
            parent[part.id] = whole.id;
            masses.remove(part.id);
        }
        parts.forEach(part -> whole.neighbors.remove(part.id));
        for (int id : whole.neighbors) {
            parts.forEach(part -> of(masses, id).neighbors.remove(part.id));
            of(masses, id).neighbors.add(whole.id);
        }
        masses.put(whole.id, whole);
        return whole;
    }

    private static Mass of(Map<Integer, Mass> masses, int id) {
        return Objects.requireNonNull(masses.get(id));
    }

    private int find(int node) {
        int root = node;
        while (parent[root] != root) {
            parent[root] = parent[parent[root]];
            root = parent[root];
        }
        return root;
    }

    private void unite(int one, int other) {
        int first = find(one);
        int second = find(other);
        parent[Math.max(first, second)] = Math.min(first, second);
    }

    /** A connected region of one value, known by the first of its nodes. */
    private static final class Mass {
        final int id;
        final boolean dark;
        final Set<Integer> neighbors = new HashSet<>();
        double area;

        Mass(int id, boolean dark) {
            this.id = id;
            this.dark = dark;
        }
    }
}
