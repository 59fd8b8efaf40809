package umbercard.geometry;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;

/** Who gets what of one value: its masses, and pieces that belong to none; together all of it. See {@link Masses}. */
record Allotment(List<Region> masses, List<Region> rest) {
    /** What lies so near to a mass touches it: cuts along the same border may differ by the grid's rounding. */
    private static final double TOUCH = 0x1p-26;

    /**
     * Allots a region.
     *
     * @param bodies where the masses are, apart from each other
     * @param width in units
     */
    static Allotment of(Region value, List<Region> bodies, double width) {
        return new Sharing(bodies).share(value.pieces(), width);
    }

    private static final class Sharing {
        private final List<Region> bodies;
        private final TreeMap<Integer, List<Region>> shares = new TreeMap<>();
        private final List<Region> masses = new ArrayList<>();
        private final List<Region> rest = new ArrayList<>();

        Sharing(List<Region> bodies) {
            this.bodies = bodies;
        }

        Allotment share(List<Region> pieces, double width) {
            Near near = new Near(bodies);
            for (Region piece : pieces) {
                share(piece, near.to(piece), width);
            }
            shares.values().forEach(parts -> masses.add(Region.together(parts)));
            return new Allotment(masses, rest);
        }

        /** One connected piece, and the numbers of the bodies that may reach it. */
        private void share(Region piece, List<Integer> near, double width) {
            TreeMap<Integer, Region> reached = new TreeMap<>();
            for (int body : near) {
                Region part = piece.intersect(bodies.get(body));
                if (!part.isEmpty()) {
                    reached.put(body, part);
                }
            }
            if (reached.size() == 1) {
                give(reached.firstKey(), piece);
            } else if (reached.size() > 1) {
                cut(piece, reached);
            } else if (piece.area() > width * piece.perimeter()) {
                // Nowhere wider than the width it would have under half of that: shrinking has lost it.
                masses.add(piece);
            } else {
                rest.add(piece);
            }
        }

        private void cut(Region piece, TreeMap<Integer, Region> reached) {
            List<Integer> numbers = new ArrayList<>(reached.keySet());
            List<Region> parts = new ArrayList<>(reached.values());
            Region left = piece;
            for (Region part : parts) {
                left = left.minus(part);
            }
            parts.addAll(left.pieces());
            List<Set<Integer>> touched = new ArrayList<>();
            parts.forEach(part -> touched.add(new HashSet<>()));
            for (NearPair pair : NearPair.within(parts, TOUCH)) {
                if (pair.one() < numbers.size() && pair.other() >= numbers.size()) {
                    touched.get(pair.other()).add(pair.one());
                }
            }
            for (int i = numbers.size(); i < parts.size(); i++) {
                if (touched.get(i).size() == 1) {
                    int mass = touched.get(i).iterator().next();
                    parts.set(mass, parts.get(mass).union(parts.get(i)));
                } else {
                    rest.add(parts.get(i));
                }
            }
            for (int i = 0; i < numbers.size(); i++) {
                give(numbers.get(i), parts.get(i));
            }
        }

        private void give(int body, Region part) {
            shares.computeIfAbsent(body, number -> new ArrayList<>()).add(part);
        }
    }
}
