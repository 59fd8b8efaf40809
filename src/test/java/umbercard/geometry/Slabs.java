package umbercard.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * The exact dark area that layers of straight-sided outlines leave, by level slabs: between neighbors among the heights of
 * all corners and all crossings no two sides cross, so the dark length of a level row is linear there, and its middle row
 * times its height is the slab's area. Right to the rounding of doubles. Nothing is snapped and nothing is overlaid: it shares
 * nothing with the overlay but the polygons that curves are flattened to.
 */
public final class Slabs {
    /** One outline, filled by the non-zero rule, that covers what lies under it with dark or with light. */
    public record Layer(boolean dark, Outline outline) {}

    /** A side that is not level, from its upper end to its lower one; {@code turn} tells which way it was drawn. */
    private record Side(int layer, double x1, double y1, double x2, double y2, int turn) {
        double at(double y) {
            return x1 + (y - y1) / (y2 - y1) * (x2 - x1);
        }

        double left() {
            return Math.min(x1, x2);
        }

        double right() {
            return Math.max(x1, x2);
        }
    }

    private record Crossing(double x, int layer, int turn) {}

    private final List<Layer> layers;
    private final boolean darkGround;
    private final double width;
    private final List<Side> sides = new ArrayList<>();

    private Slabs(List<Layer> layers, boolean darkGround, double width) {
        this.layers = layers;
        this.darkGround = darkGround;
        this.width = width;
        for (int i = 0; i < layers.size(); i++) {
            var ring = Flattening.ring(layers.get(i).outline());
            for (int k = 1; k < ring.length; k++) {
                if (ring[k - 1].y < ring[k].y) {
                    sides.add(new Side(i, ring[k - 1].x, ring[k - 1].y, ring[k].x, ring[k].y, 1));
                } else if (ring[k - 1].y > ring[k].y) {
                    sides.add(new Side(i, ring[k].x, ring[k].y, ring[k - 1].x, ring[k - 1].y, -1));
                }
            }
        }
        sides.sort(Comparator.comparingDouble(Side::y1));
    }

    /** The dark area within 0..{@code width} and 0..1 that the layers, in order, leave on a dark or light ground. */
    public static double area(List<Layer> layers, boolean darkGround, double width) {
        return new Slabs(layers, darkGround, width).area();
    }

    /** The number of sides of what the layers are flattened to; the work grows with its square. */
    public static int sides(List<Layer> layers) {
        return layers.stream()
                .mapToInt(layer -> Flattening.ring(layer.outline()).length)
                .sum();
    }

    private double area() {
        double[] heights = heights();
        List<Side> active = new ArrayList<>();
        int next = 0;
        double area = 0;
        for (int i = 1; i < heights.length; i++) {
            double thick = heights[i] - heights[i - 1];
            if (thick == 0) {
                continue;
            }
            double y = heights[i - 1] + thick / 2;
            while (next < sides.size() && sides.get(next).y1 <= y) {
                active.add(sides.get(next++));
            }
            active.removeIf(side -> side.y2 <= y);
            area += thick * darkLength(active, y);
        }
        return area;
    }

    /** The frame's edges, and within them all corners, crossings, and places where a side meets the frame's left or right. */
    private double[] heights() {
        List<Double> all = new ArrayList<>(List.of(0.0, 1.0));
        for (int i = 0; i < sides.size(); i++) {
            Side one = sides.get(i);
            all.add(one.y1);
            all.add(one.y2);
            for (double x : new double[] {0, width}) {
                if (one.left() < x && x < one.right()) {
                    all.add(one.y1 + (x - one.x1) / (one.x2 - one.x1) * (one.y2 - one.y1));
                }
            }
            for (int k = i + 1; k < sides.size() && sides.get(k).y1 < one.y2; k++) {
                cross(one, sides.get(k), all);
            }
        }
        return all.stream()
                .mapToDouble(Double::doubleValue)
                .filter(y -> y >= 0 && y <= 1)
                .sorted()
                .toArray();
    }

    private static void cross(Side one, Side two, List<Double> all) {
        if (one.right() < two.left() || two.right() < one.left()) {
            return;
        }
        double from = Math.max(one.y1, two.y1);
        double to = Math.min(one.y2, two.y2);
        double before = one.at(from) - two.at(from);
        double after = one.at(to) - two.at(to);
        if (before * after < 0) {
            all.add(from + (to - from) * (before / (before - after)));
        }
    }

    private double darkLength(List<Side> active, double y) {
        Crossing[] row = active.stream()
                .map(side -> new Crossing(Math.max(0, Math.min(width, side.at(y))), side.layer, side.turn))
                .toArray(Crossing[]::new);
        Arrays.sort(row, Comparator.comparingDouble(Crossing::x));
        int[] windings = new int[layers.size()];
        double length = 0;
        double x = 0;
        for (Crossing crossing : row) {
            if (crossing.x > x && isDark(windings)) {
                length += crossing.x - x;
            }
            x = crossing.x;
            windings[crossing.layer] += crossing.turn;
        }
        return length + (isDark(windings) ? width - x : 0);
    }

    private boolean isDark(int[] windings) {
        for (int i = windings.length - 1; i >= 0; i--) {
            if (windings[i] != 0) {
                return layers.get(i).dark();
            }
        }
        return darkGround;
    }
}
