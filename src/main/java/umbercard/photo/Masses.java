package umbercard.photo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
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
        int[] index = new int[dark.length];
        Mass[] of = measure(index);
        PriorityQueue<Mass> smallest = new PriorityQueue<>(
                Comparator.<Mass>comparingDouble(mass -> mass.area).thenComparingInt(mass -> mass.id));
        smallest.addAll(List.of(of));
        int count = of.length;
        while (count > 1) {
            Mass mass = smallest.remove();
            if (of[mass.id] != mass) {
                continue;
            }
            if (count <= most && mass.area >= least) {
                break;
            }
            count -= mass.neighbors.size();
            smallest.add(giveIn(mass, of));
        }
        for (int node = 0; node < dark.length; node++) {
            dark[node] = of[index[node]].dark;
        }
    }

    /** The masses in the order of their first nodes; {@code index} tells each node's. */
    private Mass[] measure(int[] index) {
        List<Mass> masses = new ArrayList<>();
        for (int node = 0; node < dark.length; node++) {
            int root = find(node);
            if (root == node) {
                masses.add(new Mass(masses.size(), dark[node]));
                index[node] = masses.size() - 1;
            } else {
                // A root is the first of its nodes, so it has its number by now.
                index[node] = index[root];
            }
            masses.get(index[node]).area += lattice.weight(node);
        }
        Mass[] of = masses.toArray(Mass[]::new);
        int columns = lattice.columns();
        for (int node = 0; node < dark.length; node++) {
            if (node % columns + 1 < columns) {
                meet(of[index[node]], of[index[node + 1]]);
            }
            if (node + columns < dark.length) {
                meet(of[index[node]], of[index[node + columns]]);
            }
        }
        return of;
    }

    private static void meet(Mass one, Mass other) {
        if (one.dark != other.dark) {
            one.neighbors.add(other);
            other.neighbors.add(one);
        }
    }

    /** The mass takes the other value and becomes one with its neighbors, in its own place and theirs. */
    private static Mass giveIn(Mass mass, Mass[] of) {
        Mass whole = new Mass(mass.id, !mass.dark);
        List<Mass> parts = new ArrayList<>(mass.neighbors);
        parts.add(mass);
        for (Mass part : parts) {
            whole.area += part.area;
            whole.neighbors.addAll(part.neighbors);
            whole.places.addAll(part.places);
        }
        parts.forEach(whole.neighbors::remove);
        for (Mass other : whole.neighbors) {
            parts.forEach(other.neighbors::remove);
            other.neighbors.add(whole);
        }
        whole.places.forEach(place -> of[place] = whole);
        return whole;
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

    /** A connected region of one value; regions that became one share their places in the list. */
    private static final class Mass {
        final int id;
        final boolean dark;
        final Set<Mass> neighbors = new LinkedHashSet<>();
        final List<Integer> places = new ArrayList<>();
        double area;

        Mass(int id, boolean dark) {
            this.id = id;
            this.dark = dark;
            places.add(id);
        }
    }
}
