package umbercard.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class CurveFitTest {
    private static final double PIXEL = 1.0 / 700;
    private static final double TOLERANCE = PIXEL / 2;

    /** A hand's line: a few slow waves, recorded about every {@code step} pixels. */
    private static List<Point> waves(Random random, double step) {
        double a = .05 + .1 * random.nextDouble();
        double b = 2 + 4 * random.nextDouble();
        double c = random.nextDouble();
        List<Point> points = new ArrayList<>();
        for (double x = 0; x < 1.3; x += step * PIXEL) {
            points.add(new Point(x, .5 + a * Math.sin(b * x + c) + .02 * Math.sin(3 * b * x)));
        }
        return points;
    }

    private static List<Point> onPixels(List<Point> points) {
        return points.stream()
                .map(p -> new Point(Math.rint(p.x() / PIXEL) * PIXEL, Math.rint(p.y() / PIXEL) * PIXEL))
                .toList();
    }

    private static List<Point> along(double step, double... xy) {
        List<Point> points = new ArrayList<>();
        for (int i = 2; i < xy.length; i += 2) {
            Point from = new Point(xy[i - 2], xy[i - 1]);
            Point to = new Point(xy[i], xy[i + 1]);
            int steps = (int) Math.round(from.distance(to) / step);
            for (int k = 0; k < steps; k++) {
                points.add(from.toward(to, (double) k / steps));
            }
        }
        points.add(new Point(xy[xy.length - 2], xy[xy.length - 1]));
        return points;
    }

    private static double farthest(List<Point> raw, List<Cubic> curve) {
        return raw.stream()
                .mapToDouble(point -> curve.stream()
                        .mapToDouble(cubic -> distance(point, cubic))
                        .min()
                        .orElseThrow())
                .max()
                .orElseThrow();
    }

    /** From a point to a curve of many chords. */
    private static double distance(Point point, Cubic cubic) {
        double best = Double.MAX_VALUE;
        for (int i = 0; i < 200; i++) {
            best = Math.min(best, RunFit.distanceToLine(point, cubic.at(i / 200.0), cubic.at((i + 1) / 200.0)));
        }
        return best;
    }

    @Property(seed = "1", tries = 20)
    void smoothStrokesTakeATenthOfTheirPointsOrFewer(@ForAll long seed) {
        List<Point> raw = waves(new Random(seed), 2);

        Path path = CurveFit.fit(raw, TOLERANCE);

        assertThat(path.nodes().size() * 10).isLessThanOrEqualTo(raw.size());
        assertThat(farthest(raw, path.segments())).isLessThanOrEqualTo(TOLERANCE * 1.0001);
        assertThat(path.nodes().subList(1, path.nodes().size() - 1)).allMatch(Node::round);
    }

    @Property(seed = "2", tries = 20)
    void strokesRecordedOnPixelsDoSoAtOnePixel(@ForAll long seed) {
        List<Point> raw = onPixels(waves(new Random(seed), 1.3));

        Path path = CurveFit.fit(raw, PIXEL);

        assertThat(path.nodes().size() * 10).isLessThanOrEqualTo(raw.size());
        assertThat(farthest(raw, path.segments())).isLessThanOrEqualTo(PIXEL * 1.0001);
    }

    @Property(seed = "3", tries = 10)
    void whateverIsDrawnStaysWithinTheTolerance(@ForAll long seed) {
        Random random = new Random(seed);
        List<Point> raw = new ArrayList<>();
        double x = .5;
        double y = .5;
        for (int i = 0; i < 100; i++) {
            x += random.nextGaussian() * 4 * PIXEL;
            y += random.nextGaussian() * 4 * PIXEL;
            raw.add(new Point(x, y));
            if (random.nextInt(10) == 0) {
                Collections.swap(raw, i, random.nextInt(raw.size()));
            }
        }

        assertThat(farthest(raw, CurveFit.fit(raw, TOLERANCE).segments())).isLessThanOrEqualTo(TOLERANCE * 1.0001);
        assertThat(farthest(raw, CurveFit.fitClosed(raw, TOLERANCE).segments()))
                .isLessThanOrEqualTo(TOLERANCE * 1.0001);
    }

    /** In pixels, as the pointer reports them: a mass outlined slowly, at an ordinary pace, and fast; a land edge. */
    @Property(seed = "5", tries = 5)
    void aHandsStrokesOnWholePixelsTakeATenthOfTheirPointsOrFewer(@ForAll long seed) {
        Random random = new Random(seed);
        for (double speed : new double[] {150, 300, 600}) {
            List<Point> round = HandStrokes.onPixels(HandStrokes.round(random, 100 + 150 * random.nextDouble(), speed));
            List<Point> across = HandStrokes.onPixels(HandStrokes.across(random, 60, speed));

            Outline outline = CurveFit.fitClosed(round, .5, .5);
            Path path = CurveFit.fit(across, .5, .5);

            assertThat(outline.nodes().size() * 10).isLessThanOrEqualTo(round.size());
            assertThat(outline.nodes()).allMatch(Node::round);
            assertThat(path.nodes().size() * 10).isLessThanOrEqualTo(across.size());
            assertThat(farthestPixel(round, outline.segments())).isLessThanOrEqualTo(.501);
            assertThat(farthestPixel(across, path.segments())).isLessThanOrEqualTo(.501);
        }
    }

    /** How far the pixel that lies furthest from a curve does: tried at steps, and finely round the best of them. */
    private static double farthestPixel(List<Point> pixels, List<Cubic> curve) {
        return pixels.stream()
                .mapToDouble(pixel -> curve.stream()
                        .mapToDouble(cubic -> nearest(pixel, cubic))
                        .min()
                        .orElseThrow())
                .max()
                .orElseThrow();
    }

    private static double nearest(Point pixel, Cubic cubic) {
        int best = 0;
        for (int i = 1; i <= 50; i++) {
            best = pixel.distance(cubic.at(i / 50.0)) < pixel.distance(cubic.at(best / 50.0)) ? i : best;
        }
        double distance = pixel.distance(cubic.at(best / 50.0));
        if (distance > 5) {
            return distance;
        }
        for (int i = -200; i <= 200; i++) {
            double t = Math.max(0, Math.min(1, (best + i / 200.0) / 50));
            distance = Math.min(distance, RunFit.distanceToSquare(cubic.at(t), pixel, .5));
        }
        return distance;
    }

    /** The hand's own path is known here: the curve is no further from it than one that follows every step was (0.94 pixels). */
    @Property(seed = "6", tries = 5)
    void theFittedCurveRunsNearTheHand(@ForAll long seed) {
        List<Point> hand = HandStrokes.round(new Random(seed), 200, 300);

        Outline outline = CurveFit.fitClosed(HandStrokes.onPixels(hand), .5, .5);

        assertThat(farthest(hand, outline.segments())).isLessThan(.94);
    }

    /** Rounding alone moves a place by 0.38 of a pixel in the mean; where a smooth stroke closes it is taken back as elsewhere. */
    @Test
    void aSmoothStrokeIsSmoothedWhereItClosesToo() {
        double off = 0;
        for (int seed = 0; seed < 40; seed++) {
            List<Point> hand = HandStrokes.round(new Random(seed), 150, 200);
            Outline outline = CurveFit.fitClosed(HandStrokes.onPixels(hand), .5, .5);
            off += outline.nodes().get(0).at().distance(hand.get(0)) / 40;
        }
        assertThat(off).isLessThan(.3);
    }

    @Test
    void cornersOfAStrokeOnPixelsAreKept() {
        List<Point> raw = HandStrokes.onPixels(along(3, 100, 100, 400, 133, 350, 420, 160, 391, 100, 100));

        Outline outline = CurveFit.fitClosed(raw.subList(0, raw.size() - 1), .5, .5);

        assertThat(outline).isEqualTo(Shapes.polygon(100, 100, 400, 133, 350, 420, 160, 391));
    }

    @Test
    void aStraightStrokeOnPixelsIsALine() {
        List<Point> raw = HandStrokes.onPixels(along(1.3, 20, 20, 700, 211));

        assertThat(CurveFit.fit(raw, .5, .5)).isEqualTo(Path.through(List.of(new Point(20, 20), new Point(700, 211))));
    }

    @Test
    void aGrainIsNotNegative() {
        assertThatThrownBy(() -> CurveFit.fit(List.of(), 1, -1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> CurveFit.fitClosed(List.of(), 1, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void cornersAreKeptSharpAndStraightSidesStraight() {
        List<Point> raw = along(3 * PIXEL, .2, .2, .8, .25, .7, .9, .3, .8, .2, .2);

        Outline outline = CurveFit.fitClosed(raw.subList(0, raw.size() - 1), TOLERANCE);

        assertThat(outline).isEqualTo(Shapes.polygon(.2, .2, .8, .25, .7, .9, .3, .8));
    }

    @Test
    void aCornerInTheMiddleOfAStrokeIsKeptWhereverTheStrokeBegan() {
        List<Point> raw = along(3 * PIXEL, .5, .2, .8, .2, .8, .8, .2, .8, .2, .2, .5, .2);

        assertThat(CurveFit.fit(raw, TOLERANCE).nodes())
                .extracting(Node::at)
                .containsExactly(
                        new Point(.5, .2),
                        new Point(.8, .2),
                        new Point(.8, .8),
                        new Point(.2, .8),
                        new Point(.2, .2),
                        new Point(.5, .2));
        assertThat(CurveFit.fitClosed(raw, TOLERANCE).nodes()).hasSize(4).noneMatch(Node::round);
    }

    @Test
    void aCircleClosesSmoothly() {
        List<Point> raw = new ArrayList<>();
        for (int i = 0; i < 400; i++) {
            double angle = 2 * Math.PI * i / 400;
            raw.add(new Point(.5 + .3 * Math.cos(angle), .5 + .3 * Math.sin(angle)));
        }

        Outline circle = CurveFit.fitClosed(raw, TOLERANCE);

        assertThat(circle.nodes())
                .hasSizeLessThanOrEqualTo(16)
                .allMatch(Node::round)
                .allMatch(CurveFitTest::isSmooth);
        assertThat(circle.moments().area()).isCloseTo(Math.PI * .09, within(2 * Math.PI * .3 * TOLERANCE));
    }

    private static boolean isSmooth(Node node) {
        Vector in = Vector.between(node.in(), node.at()).unit();
        Vector out = Vector.between(node.at(), node.out()).unit();
        return in.dot(out) > .999999;
    }

    @Test
    void aWideGapIsClosedStraight() {
        List<Point> raw = new ArrayList<>();
        for (int i = 0; i <= 200; i++) {
            double angle = Math.PI * i / 200;
            raw.add(new Point(.5 + .3 * Math.cos(angle), .5 + .3 * Math.sin(angle)));
        }

        Outline half = CurveFit.fitClosed(raw, TOLERANCE);

        assertThat(half.segments().stream().filter(Cubic::isLine)).hasSize(1);
        assertThat(half.moments().area()).isCloseTo(Math.PI * .09 / 2, within(Math.PI * .3 * TOLERANCE));
    }

    @Test
    void everyRoundNodeIsPassedSmoothly() {
        Path path = CurveFit.fit(waves(new Random(5), 1), TOLERANCE);

        assertThat(path.nodes()).hasSizeGreaterThan(3);
        assertThat(path.nodes().stream().filter(Node::round)).allMatch(CurveFitTest::isSmooth);
    }

    @Test
    void aStraightStrokeIsALine() {
        assertThat(CurveFit.fit(along(PIXEL, .1, .1, .9, .4), TOLERANCE))
                .isEqualTo(Path.through(List.of(new Point(.1, .1), new Point(.9, .4))));
    }

    @Test
    void hardlyAnythingDrawnIsKeptAsItIs() {
        Point a = new Point(.3, .3);
        Point b = new Point(.4, .3);
        assertThat(CurveFit.fit(List.of(), TOLERANCE).nodes()).isEmpty();
        assertThat(CurveFit.fit(List.of(a, a, a), TOLERANCE).nodes()).hasSize(1);
        assertThat(CurveFit.fit(List.of(a, b), TOLERANCE).nodes()).hasSize(2);
        assertThat(CurveFit.fit(List.of(a, b, a, b), TOLERANCE).nodes()).hasSize(4);
        assertThat(CurveFit.fitClosed(List.of(), TOLERANCE).nodes()).isEmpty();
        assertThat(CurveFit.fitClosed(List.of(a, a), TOLERANCE).nodes()).hasSize(1);
        assertThat(CurveFit.fitClosed(List.of(a, b, a), TOLERANCE).nodes()).hasSize(3);
        assertThat(CurveFit.fitClosed(List.of(a, b, new Point(.4, .4)), TOLERANCE)
                        .nodes())
                .hasSize(3);
    }

    @Test
    void aHundredThousandPointsDoNotExhaustTheThread() {
        Random random = new Random(1);
        List<Point> raw = new ArrayList<>();
        for (int i = 0; i < 100_000; i++) {
            raw.add(new Point(i * 1e-5 + random.nextDouble() * .004, random.nextDouble() * .004));
        }
        assertThat(CurveFit.fit(raw, TOLERANCE).nodes()).hasSizeLessThanOrEqualTo(raw.size());
    }

    @Test
    void aToleranceIsOverZero() {
        assertThatThrownBy(() -> CurveFit.fit(List.of(), 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> CurveFit.fitClosed(List.of(), Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
