package umbercard.geometry;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** Who gets what of one value: its masses, and pieces that belong to none; together all of it. See {@link Masses}. */
final class Allotment {
    /** What lies so near to a mass touches it: cuts along the same border may differ by the grid's rounding. */
    private static final double TOUCH = 0x1p-26;

    private final List<Layer> layers = new ArrayList<>();
    private final SortedMap<Integer, List<Region>> shares = new TreeMap<>();
    private final List<Region> lost = new ArrayList<>();
    private final List<Region> rest = new ArrayList<>();

    /** Bodies that share no border, by their numbers, as one region. */
    private static final class Layer {
        final List<Integer> numbers = new ArrayList<>();
        final List<Region> regions = new ArrayList<>();
        final Region all;
        final Near near;

        Layer(List<Bodies.Body> bodies, int layer) {
            for (int i = 0; i < bodies.size(); i++) {
                if (bodies.get(i).layer() == layer) {
                    numbers.add(i);
                    regions.add(bodies.get(i).region());
                }
            }
            all = Region.together(regions);
            near = new Near(regions);
        }
    }

    private Allotment(List<Bodies.Body> bodies) {
        int most = bodies.stream().mapToInt(Bodies.Body::layer).max().orElse(-1);
        for (int layer = 0; layer <= most; layer++) {
            layers.add(new Layer(bodies, layer));
        }
    }

    /**
     * Allots a region.
     *
     * @param bodies where the masses are
     * @param width in units
     */
    static Allotment of(Region value, List<Bodies.Body> bodies, double width) {
        Allotment allotment = new Allotment(bodies);
        value.pieces().forEach(piece -> allotment.allot(piece, width));
        return allotment;
    }

    List<Region> masses() {
        List<Region> masses = new ArrayList<>(lost);
        shares.values().forEach(parts -> masses.add(Region.together(parts)));
        return masses;
    }

    List<Region> rest() {
        return rest;
    }

    private void allot(Region piece, double width) {
        SortedMap<Integer, List<Region>> reached = reached(piece);
        if (reached.size() == 1) {
            give(reached.firstKey(), piece);
        } else if (reached.size() > 1) {
            cut(piece, reached);
        } else if (piece.area() > width * piece.perimeter()) {
            // Places within half the width of the border have about half as much area at most: shrinking has lost it.
            lost.add(piece);
        } else {
            rest.add(piece);
        }
    }

    /** A connected piece's parts within each body that it reaches. */
    private SortedMap<Integer, List<Region>> reached(Region piece) {
        SortedMap<Integer, List<Region>> reached = new TreeMap<>();
        for (Layer layer : layers) {
            for (Region part : piece.intersect(layer.all).pieces()) {
                OptionalInt holder = layer.near.holder(part);
                if (holder.isPresent()) {
                    int number = layer.numbers.get(holder.getAsInt());
                    reached.computeIfAbsent(number, body -> new ArrayList<>()).add(part);
                }
            }
        }
        return reached;
    }

    private void cut(Region piece, SortedMap<Integer, List<Region>> reached) {
        List<Region> parts =
                new ArrayList<>(reached.values().stream().map(Region::together).toList());
        Region left = piece;
        for (Layer layer : layers) {
            left = left.minus(layer.all);
        }
        List<List<Region>> ends = new ArrayList<>();
        parts.forEach(part -> ends.add(new ArrayList<>()));
        List<Region> loose = left.pieces();
        List<Set<Integer>> touched = touched(parts, loose);
        for (int i = 0; i < loose.size(); i++) {
            List<Region> taker = touched.get(i).size() == 1
                    ? ends.get(touched.get(i).iterator().next())
                    : rest;
            taker.add(loose.get(i));
        }
        int i = 0;
        for (int number : reached.keySet()) {
            give(number, parts.get(i).union(Region.together(ends.get(i))));
            i++;
        }
    }

    /** For each loose piece the numbers of the parts that it touches. */
    private static List<Set<Integer>> touched(List<Region> parts, List<Region> loose) {
        List<Set<Integer>> touched = new ArrayList<>();
        loose.forEach(end -> touched.add(new HashSet<>()));
        List<Region> all = new ArrayList<>(parts);
        all.addAll(loose);
        for (NearPair pair : NearPair.within(all, TOUCH)) {
            if (pair.one() < parts.size() && pair.other() >= parts.size()) {
                touched.get(pair.other() - parts.size()).add(pair.one());
            }
        }
        return touched;
    }

    private void give(int body, Region part) {
        shares.computeIfAbsent(body, number -> new ArrayList<>()).add(part);
    }
}
