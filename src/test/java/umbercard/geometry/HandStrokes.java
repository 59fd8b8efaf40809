package umbercard.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Strokes as a hand makes them and a pointer reports them: a smooth curve run through faster where it is straighter, by the
 * two-thirds power law (Lacquaniti, Terzuolo and Viviani 1983, "The law relating the kinematic and figural aspects of drawing
 * movements", Acta Psychologica 54), starting and ending at rest; sampled 125 times a second. In pixels.
 */
final class HandStrokes {
    static final double SAMPLES_A_SECOND = 125;

    private static final int FINE = 20_000;

    /** Speed grows over this share of the stroke from rest, and falls so at its end. */
    private static final double RAMP = .1;

    private HandStrokes() {}

    /**
     * A closed stroke round a mass.
     *
     * @param radius about how far it lies from its middle
     * @param speed pixels a second, in the mean over the length
     */
    static List<Point> round(Random random, double radius, double speed) {
        double[] size = new double[5];
        double[] phase = new double[5];
        for (int k = 2; k < 5; k++) {
            size[k] = .25 * random.nextDouble() / (k - 1);
            phase[k] = 2 * Math.PI * random.nextDouble();
        }
        double turn = 2 * Math.PI * random.nextDouble();
        List<Point> fine = new ArrayList<>();
        for (int i = 0; i <= FINE; i++) {
            double angle = turn + 2 * Math.PI * i / FINE;
            double r = radius;
            for (int k = 2; k < 5; k++) {
                r += radius * size[k] * Math.cos(k * angle + phase[k]);
            }
            fine.add(new Point(500 + r * Math.cos(angle), 350 + r * Math.sin(angle)));
        }
        return sampled(fine, speed);
    }

    /** A wavy line across the card, as for a land edge; {@code height} pixels from trough to crest. */
    static List<Point> across(Random random, double height, double speed) {
        double waves = 2 + 4 * random.nextDouble();
        double phase = 2 * Math.PI * random.nextDouble();
        List<Point> fine = new ArrayList<>();
        for (int i = 0; i <= FINE; i++) {
            double t = (double) i / FINE;
            double y = Math.sin(waves * 2 * Math.PI * t + phase) + .3 * Math.sin(waves * 5 * t - phase);
            fine.add(new Point(20 + 850 * t, 350 + height / 2 * y));
        }
        return sampled(fine, speed);
    }

    private static List<Point> sampled(List<Point> fine, double speed) {
        double[] slowness = new double[fine.size()];
        double length = 0;
        double time = 0;
        for (int i = 1; i < fine.size() - 1; i++) {
            double step = fine.get(i).distance(fine.get(i + 1));
            double share = (double) i / fine.size();
            double ramp = Math.min(1, Math.min(share, 1 - share) / RAMP + .05);
            slowness[i] = step * Math.cbrt(bend(fine.get(i - 1), fine.get(i), fine.get(i + 1))) / ramp;
            length += step;
            time += slowness[i];
        }
        double seconds = length / speed;
        List<Point> sampled = new ArrayList<>();
        double now = 0;
        for (int i = 1; i < fine.size() - 1; i++) {
            if (now * SAMPLES_A_SECOND >= sampled.size()) {
                sampled.add(fine.get(i));
            }
            now += slowness[i] / time * seconds;
        }
        sampled.add(fine.get(fine.size() - 1));
        return sampled;
    }

    /** The curvature in pixels; not less than a thousandth, or the hand would fly along straight parts. */
    private static double bend(Point a, Point b, Point c) {
        Vector before = Vector.between(a, b);
        Vector after = Vector.between(b, c);
        double cross = before.x() * after.y() - before.y() * after.x();
        return Math.max(1e-3, Math.abs(cross) / Math.pow((before.length() + after.length()) / 2, 3));
    }

    /** What a pointer reports of a stroke. */
    static List<Point> onPixels(List<Point> stroke) {
        return stroke.stream()
                .map(p -> new Point(Math.rint(p.x()), Math.rint(p.y())))
                .toList();
    }
}
