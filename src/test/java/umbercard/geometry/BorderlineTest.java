package umbercard.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static umbercard.geometry.Shapes.ellipse;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class BorderlineTest {
    private static final double RATIO = 11.5 / 8.5;
    private static final Region SQUARE = Region.rectangle(0, 0, 1, 1);

    private static double border(Region region, double x, double y, double r) {
        return Borderline.of(region).lengthWithin(new Circle(new Point(x, y), r));
    }

    @Test
    void aCircleCutsChordsOutOfEdges() {
        assertThat(border(SQUARE, .5, 0, .25)).isCloseTo(.5, within(1e-15));
        assertThat(border(SQUARE, .5, .3, .5)).isCloseTo(2 * .4, within(1e-15));
        assertThat(border(SQUARE, 0, 0, .5)).isCloseTo(1, within(1e-15));
        assertThat(border(SQUARE, .5, .5, .5)).isZero();
        assertThat(border(SQUARE, .5, .5, .4)).isZero();
        assertThat(border(SQUARE, .5, .5, 1)).isCloseTo(4, within(1e-15));
        assertThat(border(SQUARE, 5, 5, 1)).isZero();
        assertThat(border(Region.empty(), 0, 0, 1)).isZero();
        assertThat(border(SQUARE, 0, 0, 0)).isZero();
        assertThatThrownBy(() -> new Circle(new Point(0, 0), -1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void holesHaveBordersToo() {
        Region ring = SQUARE.minus(Region.rectangle(.25, .25, .75, .75));

        assertThat(border(ring, .5, .5, .4)).isCloseTo(2, within(1e-15));
        assertThat(Borderline.of(ring).length()).isEqualTo(ring.perimeter());
        assertThat(new Circle(new Point(.5, .5), 1).areaWithin(ring)).isCloseTo(.75, within(1e-15));
    }

    @Test
    void whatRunsAlongTheFrameIsNoEdgeBetweenValues() {
        Region band = Region.rectangle(0, .25, RATIO, .5);
        Region ground = Region.rectangle(0, .5, RATIO, 1);

        assertThat(Borderline.withinFrame(band, RATIO).length()).isCloseTo(2 * RATIO, within(1e-8));
        assertThat(Borderline.withinFrame(ground, RATIO).length()).isCloseTo(RATIO, within(1e-8));
        assertThat(Borderline.withinFrame(Region.rectangle(0, 0, RATIO, 1), RATIO)
                        .length())
                .isZero();
        assertThat(Borderline.withinFrame(band, RATIO).lengthWithin(new Circle(new Point(0, .5), .125)))
                .isCloseTo(.125, within(1e-12));
    }

    /** Two discs of the lens rows of geometry_checks.csv: what one circle holds of the other disc and of its border. */
    @ParameterizedTest(name = "{1}")
    @CsvFileSource(resources = "circle_lenses.csv", numLinesToSkip = 1)
    void lensesHaveTheirPublishedFigures(
            String shape, String parameters, double left, double right, double apart, double area, double perimeter) {
        Region disc = Region.of(ellipse(apart, 0, right, right, 64));
        Circle circle = new Circle(new Point(0, 0), left);
        Region otherDisc = Region.of(ellipse(0, 0, left, left, 64));
        Circle other = new Circle(new Point(apart, 0), right);

        assertThat(circle.areaWithin(disc)).isCloseTo(area, within(1e-5));
        assertThat(other.areaWithin(otherDisc)).isCloseTo(area, within(1e-5));
        assertThat(Borderline.of(disc).lengthWithin(circle)
                        + Borderline.of(otherDisc).lengthWithin(other))
                .isCloseTo(perimeter, within(1e-4));
    }

    /** Against edges cut into a thousand parts, and areas against the overlay with a drawn circle. */
    @Property(seed = "33", tries = 40)
    void chordsAndAreasAgreeWithCutting(@ForAll long seed) {
        Random random = new Random(seed);
        Region region = Region.of(Strokes.blob(random, 3 + random.nextInt(9), .1 + random.nextDouble() / 2))
                .union(Region.of(Strokes.awkward(random)));
        Circle circle =
                new Circle(new Point(random.nextDouble() * 1.4, random.nextDouble()), .05 + random.nextDouble() / 2);

        double[] cut = new double[1];
        region.eachEdge((from, to) -> {
            Point a = new Point(from.x, from.y);
            Point b = new Point(to.x, to.y);
            for (int i = 0; i < 1000; i++) {
                cut[0] += a.toward(b, (i + .5) / 1000).distance(circle.center()) < circle.radius()
                        ? a.distance(b) / 1000
                        : 0;
            }
        });
        assertThat(Borderline.of(region).lengthWithin(circle)).isCloseTo(cut[0], within(4e-3));
        Region round =
                Region.of(ellipse(circle.center().x(), circle.center().y(), circle.radius(), circle.radius(), 16));
        assertThat(circle.areaWithin(region)).isCloseTo(region.intersect(round).area(), within(1e-6));

        Circle mirrored = new Circle(
                new Point(RATIO - circle.center().x(), circle.center().y()), circle.radius());
        assertThat(Borderline.of(region.mirrored(RATIO)).lengthWithin(mirrored))
                .isCloseTo(Borderline.of(region).lengthWithin(circle), within(1e-6));
    }
}
