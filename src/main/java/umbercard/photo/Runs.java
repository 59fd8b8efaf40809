package umbercard.photo;

import java.util.Arrays;

/** The runs of dark and light along a lattice's rows, from the upper left on, and which of them are connected. */
final class Runs {
    /** The border's length from that of its steps along rows and columns: the mean over all directions (Cauchy, Crofton). */
    private static final double OF_STEPS = Math.PI / 4;

    private final Lattice lattice;
    private final double split;
    private final boolean[] rowDark;
    private final int[] rowStart;
    private int[] start = new int[64];
    private int[] parent = new int[0];
    private int count;

    /** Takes what meets a border between two runs. */
    @FunctionalInterface
    interface Border {
        /**
         * Called for each stretch.
         *
         * @param length in frame units
         */
        void between(int one, int other, double length);
    }

    /** @param split a luminance: what lies below it is dark */
    Runs(Lattice lattice, double split) {
        this.lattice = lattice;
        this.split = split;
        rowDark = new boolean[lattice.rows()];
        rowStart = new int[lattice.rows() + 1];
        for (int r = 0; r < lattice.rows(); r++) {
            findRuns(r);
        }
        rowStart[lattice.rows()] = count;
        parent = new int[count];
        for (int run = 0; run < count; run++) {
            parent[run] = run;
        }
        joinRows();
    }

    private void findRuns(int r) {
        int from = r * lattice.columns();
        rowStart[r] = count;
        boolean dark = lattice.sample(from) < split;
        rowDark[r] = dark;
        add(from);
        for (int node = from + 1; node < from + lattice.columns(); node++) {
            if (lattice.sample(node) < split != dark) {
                dark = !dark;
                add(node);
            }
        }
    }

    private void add(int node) {
        if (count == start.length) {
            start = Arrays.copyOf(start, 2 * count);
        }
        start[count++] = node;
    }

    int count() {
        return count;
    }

    /** The first node of a run. */
    int start(int run) {
        return start[run];
    }

    /** The node after the last one of a run. */
    int end(int run) {
        return run + 1 < count ? start[run + 1] : lattice.size();
    }

    boolean isDark(int run) {
        int r = start[run] / lattice.columns();
        return rowDark[r] == ((run - rowStart[r]) % 2 == 0);
    }

    /** In frame units; the nodes on the border have none. */
    double area(int run) {
        int columns = lattice.columns();
        int r = start[run] / columns;
        if (r == 0 || r == lattice.rows() - 1) {
            return 0;
        }
        int from = Math.max(1, start[run] - r * columns);
        int to = Math.min(columns - 1, end(run) - r * columns);
        return (to - from) * lattice.cell();
    }

    /** The first of the runs connected with this one. */
    int root(int run) {
        int root = run;
        while (parent[root] != root) {
            parent[root] = parent[parent[root]];
            root = parent[root];
        }
        return root;
    }

    private void unite(int one, int other) {
        int first = root(one);
        int second = root(other);
        parent[Math.max(first, second)] = Math.min(first, second);
    }

    private void joinRows() {
        for (int r = 0; r + 1 < lattice.rows(); r++) {
            int columns = lattice.columns();
            int above = rowStart[r];
            int below = rowStart[r + 1];
            while (above < rowStart[r + 1] && below < rowStart[r + 2]) {
                if (isDark(above) == isDark(below)) {
                    unite(above, below);
                }
                int endAbove = end(above);
                int endBelow = end(below) - columns;
                if (endAbove == endBelow && endAbove < (r + 1) * columns) {
                    joinAcross(endAbove - 1, above, below);
                }
                above += endAbove <= endBelow ? 1 : 0;
                below += endBelow <= endAbove ? 1 : 0;
            }
        }
    }

    /** Where two darks meet two lights in a cell's corners, its middle says which pair is joined. */
    private void joinAcross(int node, int above, int below) {
        if (isDark(above) == isDark(below)) {
            return;
        }
        // Runs alternate: the next one above is of the lower one's value, and the other way round.
        if (lattice.middleBelow(node, split) == isDark(above)) {
            unite(above, below + 1);
        } else {
            unite(above + 1, below);
        }
    }

    /** Hands on all that two runs of different value touch along, the same two perhaps more than once. */
    void eachBorder(Border border) {
        double across = OF_STEPS * lattice.ratio() / (lattice.columns() - 2);
        double down = OF_STEPS / (lattice.rows() - 2);
        for (int r = 0; r < lattice.rows(); r++) {
            for (int run = rowStart[r] + 1; run < rowStart[r + 1]; run++) {
                border.between(run - 1, run, down);
            }
            if (r + 1 < lattice.rows()) {
                betweenRows(r, across, border);
            }
        }
    }

    private void betweenRows(int r, double across, Border border) {
        int columns = lattice.columns();
        int above = rowStart[r];
        int below = rowStart[r + 1];
        while (above < rowStart[r + 1] && below < rowStart[r + 2]) {
            int endAbove = end(above);
            int endBelow = end(below) - columns;
            int from = Math.max(start[above], start[below] - columns);
            if (isDark(above) != isDark(below)) {
                border.between(above, below, across * (Math.min(endAbove, endBelow) - from));
            }
            above += endAbove <= endBelow ? 1 : 0;
            below += endBelow <= endAbove ? 1 : 0;
        }
    }
}
