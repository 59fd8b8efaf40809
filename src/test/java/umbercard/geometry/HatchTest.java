package umbercard.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HatchTest {
    private static final int DENSITY = 8000;

    private static Moments measured(Hatch hatch, Outline outline) {
        Hatching covered = hatch.of(outline);
        double[] sums = new double[6];
        Moments all = Moments.ZERO;
        Spans spans = new Spans();
        for (int line = covered.first(); line < covered.end(); line++) {
            spans.clear();
            covered.addTo(spans, line);
            hatch.measure(line, spans, sums, 0);
            all = all.plus(new Moments(sums[0], sums[1], sums[2], sums[3], sums[4], sums[5]));
        }
        return all;
    }

    private static void same(Moments actual, Moments expected, double off) {
        assertThat(actual.area()).isCloseTo(expected.area(), within(off));
        assertThat(actual.x()).isCloseTo(expected.x(), within(2 * off));
        assertThat(actual.y()).isCloseTo(expected.y(), within(2 * off));
        assertThat(actual.xx()).isCloseTo(expected.xx(), within(4 * off));
        assertThat(actual.yy()).isCloseTo(expected.yy(), within(4 * off));
        assertThat(actual.xy()).isCloseTo(expected.xy(), within(4 * off));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.4, 0.75, 1, 4 / 3.0, 2, 3})
    void wholeLinesMeasureTheFrame(double ratio) {
        Hatch hatch = new Hatch(ratio, DENSITY);
        double[] sums = new double[6];
        Moments all = Moments.ZERO;
        for (int line = 0; line < hatch.size(); line++) {
            hatch.measure(line, hatch.whole(line), sums, 0);
            all = all.plus(new Moments(sums[0], sums[1], sums[2], sums[3], sums[4], sums[5]));
        }

        same(all, Outline.rectangle(0, 0, ratio, 1).moments(), 5e-7 * ratio);
        same(measured(hatch, Outline.rectangle(-1, -2, ratio + 3, 4)), all, 1e-12);
    }

    /** In closed form, by Green's theorem on the curves (see {@link Green}). */
    @Property(seed = "1", tries = 40)
    void aBlobHasTheMomentsOfItsCurves(@ForAll long seed) {
        Random random = new Random(seed);
        Outline blob = Strokes.blob(random, 12 + random.nextInt(40), .05 + .25 * random.nextDouble());
        Outline within = blob.mapped(p -> new Point((p.x() + .4) / 2, (p.y() + .4) / 2));

        same(measured(new Hatch(2.5, DENSITY), within), within.moments(), 2e-6);
    }

    /** The overlay fills by the same rule and shares nothing with it but flattening. */
    @Property(seed = "2", tries = 40)
    void aStrokeThatCrossesItselfFillsAsInkDoes(@ForAll long seed) {
        Random random = new Random(seed);
        Outline stroke = random.nextInt(3) == 0
                ? Strokes.awkward(random)
                : Strokes.wandering(random, 3 + random.nextInt(40), .1 + .8 * random.nextDouble());
        Region filled = Region.of(stroke).intersect(Region.rectangle(0, 0, 1.35, 1));

        same(measured(new Hatch(1.35, DENSITY), stroke), filled.moments(), 4e-6);
    }

    /** Lines bend, so that a straight border can run along one for a short way only. */
    @Property(seed = "3", tries = 60)
    void aStraightBorderOfAnyTiltIsMeasured(@ForAll long seed) {
        Random random = new Random(seed);
        double tilt = -random.nextDouble();
        double left = random.nextDouble() * 1.5;
        Outline ground = Outline.polygon(
                List.of(new Point(0, left), new Point(1.5, left + 1.5 * tilt), new Point(1.5, 3), new Point(0, 3)));
        Region within = Region.of(ground).intersect(Region.rectangle(0, 0, 1.5, 1));

        same(measured(new Hatch(1.5, DENSITY), ground), within.moments(), 3e-6);
    }

    @Test
    void aCombOfManyTeethIsMeasured() {
        int teeth = 4000;
        Point[] corners = new Point[2 * teeth + 2];
        for (int i = 0; i < teeth; i++) {
            corners[2 * i] = new Point((double) i / teeth, .1);
            corners[2 * i + 1] = new Point((i + .5) / teeth, .9);
        }
        corners[2 * teeth] = new Point(1, .95);
        corners[2 * teeth + 1] = new Point(0, .95);
        Outline comb = Outline.polygon(List.of(corners));

        assertThat(measured(new Hatch(1, 1000), comb).area())
                .isCloseTo(comb.moments().area(), within(1e-5));
    }

    @Test
    void whatLiesOutsideTheFrameCoversNothing() {
        Hatch hatch = new Hatch(1.2, 500);
        for (Outline outside :
                List.of(Outline.rectangle(1.3, -5, 9, 9), Outline.rectangle(-1, -1, 3, -.1), new Outline(List.of()))) {
            assertThat(measured(hatch, outside)).isEqualTo(Moments.ZERO);
        }
    }
}
