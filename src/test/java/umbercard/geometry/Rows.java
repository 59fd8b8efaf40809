package umbercard.geometry;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * A second, independent way to fill: the spans of a level row where the winding number of the drawn curves is not zero.
 * Crossings are found on the cubics themselves by bisection between the places where they turn up or down. Shares nothing
 * with the overlay.
 */
public final class Rows {
    /** A part of a row, from left to right. */
    public record Span(double from, double to) {}

    private record Crossing(double x, int turn) {}

    private Rows() {}

    /** What the outlines together fill of the row at {@code y}, by the non-zero rule. */
    public static List<Span> filled(Collection<Outline> outlines, double y) {
        List<Crossing> crossings = new ArrayList<>();
        outlines.forEach(outline -> outline.segments().forEach(segment -> cross(segment, y, crossings)));
        crossings.sort(Comparator.comparingDouble(Crossing::x));
        List<Span> spans = new ArrayList<>();
        int winding = 0;
        double from = 0;
        for (Crossing crossing : crossings) {
            int before = winding;
            winding += crossing.turn;
            if (before == 0) {
                from = crossing.x;
            } else if (winding == 0) {
                spans.add(new Span(from, crossing.x));
            }
        }
        return spans;
    }

    /** The total length of spans within 0 and {@code width}. */
    public static double length(List<Span> spans, double width) {
        return spans.stream()
                .mapToDouble(span -> Math.max(0, Math.min(width, span.to) - Math.max(0, span.from)))
                .sum();
    }

    /** The spans that lie in {@code one} or in {@code two}. */
    public static List<Span> union(List<Span> one, List<Span> two) {
        List<Span> all = new ArrayList<>(one);
        all.addAll(two);
        all.sort(Comparator.comparingDouble(Span::from));
        List<Span> result = new ArrayList<>();
        for (Span span : all) {
            int last = result.size() - 1;
            if (last >= 0 && span.from <= result.get(last).to) {
                result.set(last, new Span(result.get(last).from, Math.max(result.get(last).to, span.to)));
            } else {
                result.add(span);
            }
        }
        return result;
    }

    /** The spans of {@code one} that do not lie in {@code two}. */
    public static List<Span> minus(List<Span> one, List<Span> two) {
        List<Span> result = one;
        for (Span cut : two) {
            List<Span> rest = new ArrayList<>();
            for (Span span : result) {
                if (cut.to <= span.from || cut.from >= span.to) {
                    rest.add(span);
                    continue;
                }
                if (cut.from > span.from) {
                    rest.add(new Span(span.from, cut.from));
                }
                if (cut.to < span.to) {
                    rest.add(new Span(cut.to, span.to));
                }
            }
            result = rest;
        }
        return result;
    }

    private static void cross(Cubic c, double y, List<Crossing> crossings) {
        double a = c.start().y();
        double b = c.pullStart().y();
        double d = c.pullEnd().y();
        double e = c.end().y();
        double[] turns = turns(b - a, d - b, e - d);
        for (int i = 1; i < turns.length; i++) {
            double low = value(a, b, d, e, turns[i - 1]);
            double high = value(a, b, d, e, turns[i]);
            if (low <= y && high > y || high <= y && low > y) {
                double t = bisect(s -> value(a, b, d, e, s) - y, turns[i - 1], turns[i]);
                double x = value(
                        c.start().x(),
                        c.pullStart().x(),
                        c.pullEnd().x(),
                        c.end().x(),
                        t);
                crossings.add(new Crossing(x, high > low ? 1 : -1));
            }
        }
    }

    private static double value(double a, double b, double c, double d, double t) {
        double s = 1 - t;
        return s * s * s * a + 3 * s * s * t * b + 3 * s * t * t * c + t * t * t * d;
    }

    /** 0, 1 and the parameters between where (1-t)² p + 2 t (1-t) q + t² r is zero, in order. */
    private static double[] turns(double p, double q, double r) {
        List<Double> all = new ArrayList<>(List.of(0.0, 1.0));
        double a = p - 2 * q + r;
        double b = q - p;
        double root = b * b - a * p;
        if (root > 0) {
            double sum = -(b + Math.copySign(Math.sqrt(root), b));
            all.add(sum / a);
            all.add(p / sum);
        }
        return all.stream()
                .filter(t -> t >= 0 && t <= 1)
                .mapToDouble(Double::doubleValue)
                .sorted()
                .toArray();
    }

    private static double bisect(DoubleUnaryOperator f, double from, double to) {
        double low = from;
        double high = to;
        boolean rising = f.applyAsDouble(to) > f.applyAsDouble(from);
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (f.applyAsDouble(middle) > 0 == rising) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return (low + high) / 2;
    }
}
