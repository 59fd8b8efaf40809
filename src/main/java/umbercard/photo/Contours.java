package umbercard.photo;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import umbercard.geometry.Point;

/**
 * The rings round one value of a two-value lattice: through the cells by marching squares, between the samples where the
 * field itself crosses the split, and along the frame's border exactly.
 */
final class Contours {
    /** How near to a node a crossing may come, as a share of the cell's side: rings must not meet in a node. */
    private static final double CLEARANCE = 1e-3;

    private static final int NONE = -1;

    private final Lattice lattice;
    private final boolean[] inside;
    private final boolean ofDark;
    private final double split;
    private final int columns;
    private final int[] next;

    private Contours(Lattice lattice, boolean[] dark, double split, boolean ofDark) {
        this.lattice = lattice;
        this.split = split;
        this.ofDark = ofDark;
        columns = lattice.columns();
        inside = dark.clone();
        for (int i = 0; i < inside.length; i++) {
            inside[i] = dark[i] == ofDark;
        }
        // A place's key is a node, or a node plus the size (the line to its right), or plus twice the size (the line
        // below).
        next = new int[3 * inside.length];
        Arrays.fill(next, NONE);
    }

    /** The rings round the dark, or round the light, from the upper left on; holes run the other way. */
    static List<Ring> round(Lattice lattice, boolean[] dark, double split, boolean ofDark) {
        Contours contours = new Contours(lattice, dark, split, ofDark);
        contours.alongBorder();
        contours.throughCells();
        return contours.rings();
    }

    private void alongBorder() {
        int right = columns - 1;
        int bottom = lattice.rows() - 1;
        for (int c = 0; c < right; c++) {
            onBorder(c, c + 1);
            onBorder(bottom * columns + c + 1, bottom * columns + c);
        }
        for (int r = 0; r < bottom; r++) {
            onBorder(r * columns + right, (r + 1) * columns + right);
            onBorder((r + 1) * columns, r * columns);
        }
    }

    private void onBorder(int from, int to) {
        if (inside[from]) {
            next[from] = inside[to] ? to : crossing(from, to);
        } else if (inside[to]) {
            next[crossing(from, to)] = to;
        }
    }

    private int crossing(int one, int other) {
        int first = Math.min(one, other);
        return first + inside.length * (Math.abs(one - other) == 1 ? 1 : 2);
    }

    private void throughCells() {
        int[] corner = new int[4];
        int[] leaving = new int[2];
        int[] entering = new int[2];
        for (int r = 0; r + 1 < lattice.rows(); r++) {
            for (int c = 0; c + 1 < columns; c++) {
                int node = r * columns + c;
                corner[0] = node;
                corner[1] = node + 1;
                corner[2] = node + columns + 1;
                corner[3] = node + columns;
                throughCell(corner, leaving, entering);
            }
        }
    }

    /** Clockwise round the cell: where the region is left, its border runs through the cell to where it is entered. */
    private void throughCell(int[] corner, int[] leaving, int[] entering) {
        int left = 0;
        int entered = 0;
        for (int i = 0; i < 4; i++) {
            int from = corner[i];
            int to = corner[(i + 1) % 4];
            if (inside[from] && !inside[to]) {
                leaving[left++] = crossing(from, to);
            } else if (!inside[from] && inside[to]) {
                entering[entered++] = crossing(from, to);
            }
        }
        if (left == 1) {
            next[leaving[0]] = entering[0];
        } else if (left == 2) {
            boolean joined = lattice.middleBelow(corner[0], split) == ofDark;
            // With the first corner inside, the order round the cell is leave, enter, leave, enter; else the other way.
            int after = inside[corner[0]] ? 0 : 1;
            next[leaving[0]] = entering[joined ? after : 1 - after];
            next[leaving[1]] = entering[joined ? 1 - after : after];
        }
    }

    private List<Ring> rings() {
        List<Ring> rings = new ArrayList<>();
        for (int start = 0; start < next.length; start++) {
            if (next[start] != NONE) {
                rings.add(ring(start));
            }
        }
        return rings;
    }

    private Ring ring(int start) {
        List<Point> places = new ArrayList<>();
        List<Boolean> border = new ArrayList<>();
        int key = start;
        while (next[key] != NONE) {
            places.add(place(key));
            border.add(onBorder(key));
            int following = next[key];
            next[key] = NONE;
            key = following;
        }
        return new Ring(places, border);
    }

    private boolean onBorder(int key) {
        int node = key % inside.length;
        if (!lattice.onBorder(node)) {
            return false;
        }
        return switch (key / inside.length) {
            case 0 -> true;
            case 1 -> node < columns || node >= inside.length - columns;
            default -> node % columns == 0 || node % columns == columns - 1;
        };
    }

    private Point place(int key) {
        int node = key % inside.length;
        if (key < inside.length) {
            return lattice.place(node);
        }
        int other = key < 2 * inside.length ? node + 1 : node + columns;
        double from = lattice.sample(node);
        double to = lattice.sample(other);
        double share = (split - from) / (to - from);
        return lattice.place(node).toward(lattice.place(other), Math.min(1 - CLEARANCE, Math.max(CLEARANCE, share)));
    }
}
