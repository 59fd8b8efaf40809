package umbercard.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** A plot on two logarithmic axes as an SVG, on a sheet of its own, so that it reads on a light page and on a dark one. */
final class LogPlot {
    private static final int WIDTH = 760;
    private static final int HEIGHT = 440;
    private static final int LEFT = 74;
    private static final int RIGHT = 500;
    private static final int TOP = 46;
    private static final int BOTTOM = 384;

    /** Between the baselines of two labels. */
    private static final double LINE = 17;

    /** Parted in lightness as well as in hue. */
    private static final List<String> INKS = List.of("#9a5b13", "#2f6f8f", "#222222", "#8a2f55", "#4d7a2c");

    private record Series(String name, List<double[]> points, String ink) {
        double[] last() {
            return points.get(points.size() - 1);
        }
    }

    private final String across;
    private final String up;
    private final List<Series> all = new ArrayList<>();

    LogPlot(String across, String up) {
        this.across = across;
        this.up = up;
    }

    /** Adds a series, if it has points at all: x and y of each, from left to right. */
    void add(String name, List<double[]> points) {
        if (!points.isEmpty()) {
            all.add(new Series(name, points, INKS.get(all.size() % INKS.size())));
        }
    }

    private int power(boolean highest) {
        double most = all.stream()
                .flatMap(series -> series.points().stream())
                .mapToDouble(point -> highest ? point[1] : -point[1])
                .max()
                .orElse(highest ? 1 : -1);
        return (int) (highest ? Math.ceil(Math.log10(most)) : Math.floor(Math.log10(-most)));
    }

    private static double x(double marks) {
        return LEFT + 14 + (Math.log10(marks) - 1) / 2 * (RIGHT - LEFT - 28);
    }

    private double y(double ms) {
        double low = power(false);
        return BOTTOM - (Math.log10(ms) - low) / (power(true) - low) * (BOTTOM - TOP);
    }

    private static String format(String form, Object... values) {
        return String.format(Locale.ROOT, form + "%n", values).replace("\r\n", "\n");
    }

    String svg() {
        StringBuilder svg = new StringBuilder();
        svg.append(format(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%1$d\" height=\"%2$d\" viewBox=\"0 0 %1$d %2$d\""
                        + " font-family=\"sans-serif\" font-size=\"13\">",
                WIDTH, HEIGHT));
        svg.append(format("<title>%s, by the number of %s</title>", up, across));
        svg.append(format("<rect width=\"%d\" height=\"%d\" rx=\"4\" fill=\"#f7f5f0\"/>", WIDTH, HEIGHT));
        svg.append(format("<text x=\"%d\" y=\"26\" fill=\"#333\">%s</text>", LEFT, up));
        axes(svg);
        for (Series series : all) {
            line(svg, series);
        }
        labels(svg);
        return svg.append("</svg>\n").toString();
    }

    private void axes(StringBuilder svg) {
        for (int power = power(false); power <= power(true); power++) {
            double y = y(Math.pow(10, power));
            String label = power < 0
                    ? String.format(Locale.ROOT, "%." + -power + "f", Math.pow(10, power))
                            .substring(1)
                    : String.format(Locale.ROOT, "%,.0f", Math.pow(10, power));
            svg.append(format(
                    "<line x1=\"%d\" y1=\"%.1f\" x2=\"%d\" y2=\"%.1f\" stroke=\"#d8d4ca\"/>", LEFT, y, RIGHT, y));
            svg.append(format(
                    "<text x=\"%d\" y=\"%.1f\" text-anchor=\"end\" fill=\"#555\">%s</text>", LEFT - 8, y + 4.5, label));
        }
        for (int marks : new int[] {10, 50, 200, 1000}) {
            svg.append(format(
                    "<line x1=\"%.1f\" y1=\"%d\" x2=\"%.1f\" y2=\"%d\" stroke=\"#777\"/>",
                    x(marks), BOTTOM, x(marks), BOTTOM + 5));
            svg.append(format(
                    "<text x=\"%.1f\" y=\"%d\" text-anchor=\"middle\" fill=\"#555\">%d</text>",
                    x(marks), BOTTOM + 21, marks));
        }
        svg.append(
                format("<line x1=\"%d\" y1=\"%d\" x2=\"%d\" y2=\"%d\" stroke=\"#777\"/>", LEFT, BOTTOM, RIGHT, BOTTOM));
        svg.append(format(
                "<text x=\"%d\" y=\"%d\" text-anchor=\"middle\" fill=\"#333\">%s</text>",
                (LEFT + RIGHT) / 2, BOTTOM + 42, across));
    }

    private void line(StringBuilder svg, Series series) {
        StringBuilder points = new StringBuilder();
        for (double[] point : series.points()) {
            points.append(String.format(Locale.ROOT, "%.1f,%.1f ", x(point[0]), y(point[1])));
            svg.append(format(
                    "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"3.5\" fill=\"%s\"/>", x(point[0]), y(point[1]), series.ink()));
        }
        svg.append(format(
                "<polyline points=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"2\"/>",
                points.toString().strip(), series.ink()));
    }

    /** At the right, each as near to the end of its line as the one above leaves room. */
    private void labels(StringBuilder svg) {
        List<Series> fromTop = new ArrayList<>(all);
        fromTop.sort(Comparator.comparingDouble(series -> y(series.last()[1])));
        double y = TOP - LINE;
        for (Series series : fromTop) {
            y = Math.max(y + LINE, y(series.last()[1]) + 4.5);
            svg.append(format(
                    "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%d\" y2=\"%.1f\" stroke=\"%s\" stroke-opacity=\".4\"/>",
                    x(series.last()[0]) + 6, y(series.last()[1]), RIGHT + 6, y - 4.5, series.ink()));
            svg.append(format(
                    "<text x=\"%d\" y=\"%.1f\" fill=\"%s\">%s</text>", RIGHT + 12, y, series.ink(), series.name()));
        }
    }
}
