package umbercard.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static umbercard.geometry.Shapes.ellipse;
import static umbercard.geometry.Shapes.polygon;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GapTest {
    private static final double RATIO = 11.5 / 8.5;
    private static final Region SQUARE = Region.rectangle(0, 0, 1, 1);

    private static Gap gap(Region one, Region other) {
        return Gap.between(one, other).orElseThrow();
    }

    @Test
    void squaresAreApartByTheirNearestCorners() {
        Gap gap = gap(SQUARE, Region.rectangle(1.375, 1.5, 2, 2));

        assertThat(gap).isEqualTo(new Gap(new Point(1, 1), new Point(1.375, 1.5)));
        assertThat(gap.distance()).isEqualTo(.625);
        assertThat(gap(Region.rectangle(1.375, 1.5, 2, 2), SQUARE)).isEqualTo(gap.reversed());
    }

    @Test
    void aCornerIsNearestToTheMiddleOfAnEdge() {
        Gap gap = gap(SQUARE, Region.of(polygon(1.25, .5, 2, 0, 2, 1)));

        assertThat(gap).isEqualTo(new Gap(new Point(1, .5), new Point(1.25, .5)));
    }

    @Test
    void discsAreApartByTheirCentersLessTheirRadii() {
        Region one = Region.of(ellipse(0, 0, .3, .3, 64));
        Region other = Region.of(ellipse(.6, .8, .5, .5, 64));

        assertThat(gap(one, other).distance()).isCloseTo(1 - .8, within(4e-5));
        assertThat(gap(one, other).from().distance(new Point(.18, .24))).isLessThan(5e-3);
    }

    @Test
    void whatTouchesOrOverlapsIsNowhereApart() {
        List<Region> others = List.of(
                Region.rectangle(1, 0, 2, 1),
                Region.rectangle(1, 1, 2, 2),
                Region.rectangle(.5, .5, 2, 2),
                Region.rectangle(.25, .25, .5, .5),
                Region.rectangle(-1, -1, 3, 3),
                Region.rectangle(-1, .25, 2, .5),
                SQUARE);
        for (Region other : others) {
            assertThat(gap(SQUARE, other).distance()).isZero();
            assertThat(gap(other, SQUARE).distance()).isZero();
            Point place = gap(other, SQUARE).from();
            assertThat(SQUARE.contains(place) && other.contains(place)).isTrue();
        }
    }

    @Test
    void aPieceInAHoleIsApartFromItsRim() {
        Region ring = SQUARE.minus(Region.rectangle(.25, .25, .75, .75));
        Region island = Region.rectangle(.375, .5, .625, .625);

        assertThat(gap(ring, island).distance()).isEqualTo(.125);
        assertThat(gap(ring.union(Region.rectangle(.5, .5, .5625, .5625)), island)
                        .distance())
                .isZero();
    }

    @Test
    void theEmptyRegionIsNowhere() {
        assertThat(Gap.between(SQUARE, Region.empty())).isEmpty();
        assertThat(Gap.between(Region.empty(), SQUARE)).isEmpty();
        assertThat(Gap.toSide(Region.empty(), FrameSide.TOP, RATIO)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"TOP, .25, .125, .25, 0", "LEFT, .25, .125, 0, .125", "BOTTOM, .25, .5, .25, 1"})
    void aSideIsReachedStraight(FrameSide side, double x, double y, double sideX, double sideY) {
        Region square = Region.rectangle(.25, .125, .75, .5);

        assertThat(Gap.toSide(square, side, RATIO)).contains(new Gap(new Point(x, y), new Point(sideX, sideY)));
    }

    @Test
    void whatTouchesASideIsNotApartFromIt() {
        Region corner = Region.rectangle(.5, .5, RATIO, 1);

        assertThat(Gap.toSide(corner, FrameSide.RIGHT, RATIO)).hasValueSatisfying(gap -> {
            assertThat(gap.distance()).isZero();
            assertThat(gap.to()).isEqualTo(new Point(RATIO, .5));
        });
        assertThat(Gap.toSide(corner, FrameSide.BOTTOM, RATIO).orElseThrow().distance())
                .isZero();
        assertThat(Gap.toSide(Region.rectangle(.5, .5, 1, 1 - 1e-5), FrameSide.BOTTOM, RATIO)
                        .orElseThrow()
                        .distance())
                .isCloseTo(1e-5, within(1e-9));
    }

    /** Against every corner and every edge of the one with all of the other, and those far apart left out. */
    @Property(seed = "35", tries = 40)
    void nearPairsAreThoseOfAllPairsOfEdges(@ForAll long seed) {
        Random random = new Random(seed);
        List<Region> regions = new ArrayList<>(List.of(Region.empty()));
        for (int i = 0; i < 12; i++) {
            Outline blob = i % 4 == 3 ? Strokes.awkward(random) : Strokes.blob(random, 3 + random.nextInt(3), .15);
            regions.add(Region.of(
                    Outline.polygon(blob.nodes().stream().map(Node::at).toList())));
        }
        double reach = random.nextDouble() * .3;

        List<NearPair> pairs = NearPair.within(regions, reach);

        int expected = 0;
        for (int i = 0; i < regions.size(); i++) {
            for (int k = i + 1; k < regions.size(); k++) {
                double distance = slow(regions.get(i), regions.get(k));
                int one = i;
                int other = k;
                expected += distance <= reach ? 1 : 0;
                pairs.stream()
                        .filter(pair -> pair.one() == one && pair.other() == other)
                        .forEach(pair -> {
                            assertThat(pair.gap().distance()).isCloseTo(distance, within(1e-12));
                            assertThat(off(regions.get(one), pair.gap().from())).isLessThan(1e-9);
                            assertThat(off(regions.get(other), pair.gap().to())).isLessThan(1e-9);
                        });
            }
        }
        assertThat(pairs).hasSize(expected);
        assertThat(pairs.stream().map(pair -> pair.gap().distance())).isSorted();
    }

    /** How far outside a region a place lies. */
    private static double off(Region region, Point place) {
        return region.contains(place) ? 0 : toEdges(region, place);
    }

    private static double toEdges(Region region, Point place) {
        double[] least = {Double.POSITIVE_INFINITY};
        region.eachEdge((from, to) -> {
            Vector along = new Vector(to.x - from.x, to.y - from.y);
            Vector away = new Vector(place.x() - from.x, place.y() - from.y);
            double share = Math.max(0, Math.min(1, away.dot(along) / along.dot(along)));
            least[0] = Math.min(least[0], away.plus(along.times(-share)).length());
        });
        return least[0];
    }

    private static double slow(Region one, Region other) {
        if (one.isEmpty() || other.isEmpty()) {
            return Double.POSITIVE_INFINITY;
        }
        if (!one.intersect(other).isEmpty()) {
            return 0;
        }
        double least = Double.POSITIVE_INFINITY;
        for (List<Region> pair : List.of(List.of(one, other), List.of(other, one))) {
            for (Outline ring : pair.get(0).outlines()) {
                for (Node corner : ring.nodes()) {
                    least = Math.min(least, toEdges(pair.get(1), corner.at()));
                }
            }
        }
        return least;
    }

    @Test
    void hundredsOfPiecesAreHeldAgainstEachOther() {
        List<Region> dots = new ArrayList<>();
        for (int i = 0; i < 400; i++) {
            dots.add(Region.of(ellipse((i % 20) / 16.0, (i / 20) / 16.0, .025, .025, 8)));
        }

        assertThat(NearPair.within(dots, .0126)).hasSize(2 * 20 * 19);
        assertThat(NearPair.within(dots, .012)).isEmpty();
        assertThatThrownBy(() -> NearPair.within(dots, -1)).isInstanceOf(IllegalArgumentException.class);
    }
}
