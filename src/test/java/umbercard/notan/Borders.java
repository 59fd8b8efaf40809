package umbercard.notan;

import java.util.ArrayList;
import java.util.List;
import umbercard.geometry.Cubic;
import umbercard.geometry.Point;
import umbercard.model.Mark;

/** The outlines of marks as chords, to tell places where a border may pass from those where none can. */
final class Borders {
    /** Curves are flattened to within twice 2e-5. */
    private static final double FLATTENING = 5e-5;

    private static final int CHORDS = 64;

    private record Chord(Point from, Point to) {}

    private final List<Chord> chords = new ArrayList<>();
    private double margin;

    /** @param grid how far straight borders may be off */
    Borders(List<Mark> marks, double grid) {
        margin = grid;
        for (Mark mark : marks) {
            mark.outline().segments().forEach(this::add);
        }
    }

    /** A chord strays from its arc by at most an eighth of the greatest second derivative, over the square of their number. */
    private void add(Cubic c) {
        if (c.isLine()) {
            chords.add(new Chord(c.start(), c.end()));
            return;
        }
        double bend =
                6 * Math.max(bend(c.start(), c.pullStart(), c.pullEnd()), bend(c.pullStart(), c.pullEnd(), c.end()));
        margin = Math.max(margin, FLATTENING + bend / 8 / (CHORDS * CHORDS));
        Point from = c.start();
        for (int i = 1; i <= CHORDS; i++) {
            Point to = c.at((double) i / CHORDS);
            chords.add(new Chord(from, to));
            from = to;
        }
    }

    private static double bend(Point a, Point b, Point c) {
        return Math.hypot(a.x() - 2 * b.x() + c.x(), a.y() - 2 * b.y() + c.y());
    }

    /** How near a border may come unseen. */
    double margin() {
        return margin;
    }

    /** Whether no border passes within the margin. */
    boolean isClear(Point place) {
        return chords.stream().allMatch(chord -> distance(place, chord) > margin);
    }

    /** Of all the outlines together. */
    double length() {
        return chords.stream()
                .mapToDouble(chord -> chord.from().distance(chord.to()))
                .sum();
    }

    /** How far the nearest border is, of chords. */
    double distance(Point place) {
        return chords.stream()
                .mapToDouble(chord -> distance(place, chord))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private static double distance(Point p, Chord chord) {
        double dx = chord.to.x() - chord.from.x();
        double dy = chord.to.y() - chord.from.y();
        double square = dx * dx + dy * dy;
        double share = square == 0 ? 0 : ((p.x() - chord.from.x()) * dx + (p.y() - chord.from.y()) * dy) / square;
        return p.distance(chord.from.toward(chord.to, Math.max(0, Math.min(1, share))));
    }
}
