package umbercard.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WarpTest {
    private static final double RATIO = 1.25;
    private static final Warp RAISED = level(.6, .4);

    private static Warp level(double from, double to) {
        return Warp.between(line(from, from), line(to, to), RATIO);
    }

    private static Line line(double left, double right) {
        return new Line(new Point(0, left), new Point(RATIO, right));
    }

    private static Warp any(Random random) {
        double from = .2 + .6 * random.nextDouble();
        double to = .2 + .6 * random.nextDouble();
        double tilt = random.nextBoolean() ? 0 : (random.nextDouble() - .5) / 3;
        double tiltAfter = random.nextBoolean() ? tilt : (random.nextDouble() - .5) / 3;
        return Warp.between(line(from - tilt, from + tilt), line(to - tiltAfter, to + tiltAfter), RATIO);
    }

    private static Outline outline(Random random) {
        return random.nextBoolean()
                ? Strokes.blob(random, 3 + random.nextInt(12), .1 + .5 * random.nextDouble())
                : Strokes.wandering(random, 3 + random.nextInt(20), .1 + .8 * random.nextDouble());
    }

    @Test
    void theLineGoesToItsNewPlaceAndTheFrameStays() {
        assertThat(RAISED.mapped(new Point(.3, .6))).isEqualTo(new Point(.3, .4));
        assertThat(RAISED.mapped(new Point(.3, 0)).y()).isCloseTo(0, within(1e-15));
        assertThat(RAISED.mapped(new Point(.3, 1)).y()).isCloseTo(1, within(1e-15));
        assertThat(RAISED.mapped(new Point(.3, .3)).y()).isCloseTo(.2, within(1e-15));
        assertThat(RAISED.mapped(new Point(.3, .8)).y()).isCloseTo(.7, within(1e-15));
        assertThat(RAISED.stretchAbove()).isCloseTo(2 / 3.0, within(1e-15));
        assertThat(RAISED.stretchBelow()).isCloseTo(1.5, within(1e-15));
    }

    /** About a tilted line one corner of each edge stays, and the edge does not come into the frame. */
    @ParameterizedTest
    @CsvSource({".5,.7,.3,.5", ".3,.5,.5,.7", ".8,.4,.6,.2", ".2,.6,.4,.8", ".4,.6,.7,.3", ".9,.1,.5,.5"})
    void whatCoversTheFrameGoesOnCoveringIt(double left, double right, double newLeft, double newRight) {
        Warp warp = Warp.between(line(left, right), line(newLeft, newRight), RATIO);

        double upperLeft = warp.mapped(new Point(0, 0)).y();
        double upperRight = warp.mapped(new Point(RATIO, 0)).y();
        assertThat(Math.max(upperLeft, upperRight)).isCloseTo(0, within(1e-15));
        double lowerLeft = warp.mapped(new Point(0, 1)).y();
        double lowerRight = warp.mapped(new Point(RATIO, 1)).y();
        assertThat(Math.min(lowerLeft, lowerRight)).isCloseTo(1, within(1e-15));
        assertThat(warp.mapped(new Point(0, left)).y()).isCloseTo(newLeft, within(1e-15));
        assertThat(warp.mapped(new Point(RATIO, right)).y()).isCloseTo(newRight, within(1e-15));
    }

    @Property(seed = "1")
    void placesComeBack(@ForAll long seed) {
        Random random = new Random(seed);
        Warp warp = any(random);
        for (int i = 0; i < 20; i++) {
            Point place = new Point(3 * random.nextDouble() - 1, 3 * random.nextDouble() - 1);

            assertThat(warp.inverse().mapped(warp.mapped(place)).distance(place))
                    .isLessThan(1e-12);
        }
    }

    /** There and back every moment of the drawn curve is what it was. */
    @Property(seed = "2")
    void outlinesComeBack(@ForAll long seed) {
        Random random = new Random(seed);
        Warp warp = any(random);
        Outline drawn = outline(random);

        Moments back = Green.moments(warp.inverse().mapped(warp.mapped(drawn)).segments());

        Moments before = Green.moments(drawn.segments());
        assertThat(back.area()).isCloseTo(before.area(), within(1e-11));
        assertThat(back.x()).isCloseTo(before.x(), within(1e-11));
        assertThat(back.y()).isCloseTo(before.y(), within(1e-11));
        assertThat(back.yy()).isCloseTo(before.yy(), within(1e-11));
        assertThat(back.xy()).isCloseTo(before.xy(), within(1e-11));
    }

    @Property(seed = "3", tries = 25)
    void theWarpedCurveRunsWhereThePlacesOfTheCurveGo(@ForAll long seed) {
        Random random = new Random(seed);
        Warp warp = any(random);
        Outline drawn = outline(random);
        Outline warped = warp.mapped(drawn);

        List<Point> places = new ArrayList<>();
        for (Cubic segment : drawn.segments()) {
            for (int i = 0; i < 40; i++) {
                places.add(warp.mapped(segment.at(i / 40.0)));
            }
        }
        for (Point place : places) {
            assertThat(distance(place, warped.segments())).isLessThan(3e-6);
        }
    }

    private static double distance(Point place, List<Cubic> curve) {
        double best = Double.MAX_VALUE;
        for (Cubic segment : curve) {
            for (int i = 0; i < 160; i++) {
                best = Math.min(best, RunFit.distanceToLine(place, segment.at(i / 160.0), segment.at((i + 1) / 160.0)));
            }
        }
        return best;
    }

    @Property(seed = "4")
    void areasAboveAndBelowAreStretched(@ForAll long seed) {
        Random random = new Random(seed);
        double from = .2 + .6 * random.nextDouble();
        double to = .2 + .6 * random.nextDouble();
        Outline drawn = outline(random);
        Region before = Region.of(drawn);
        Region after = Region.of(level(from, to).mapped(drawn));

        double off = 2e-6 * (1 + before.perimeter());
        Region above = Region.rectangle(-9, -9, 9, from);
        Region aboveAfter = Region.rectangle(-9, -9, 9, to);
        assertThat(after.intersect(aboveAfter).area())
                .isCloseTo(before.intersect(above).area() * to / from, within(off));
        assertThat(after.minus(aboveAfter).area())
                .isCloseTo(before.minus(above).area() * (1 - to) / (1 - from), within(off));
    }

    @Test
    void aLineThatStaysMovesNothing() {
        Outline drawn = Shapes.ellipse(.6, .5, .3, .3, 4);
        Path path = Path.through(List.of(new Point(.1, .1), new Point(.9, .9)));

        assertThat(level(.4, .4).isIdentity()).isTrue();
        assertThat(level(.4, .4).mapped(drawn)).isSameAs(drawn);
        assertThat(level(.4, .4).mapped(path)).isSameAs(path);
        assertThat(level(.4, .4).mapped(new Point(.123, .987))).isEqualTo(new Point(.123, .987));
        assertThat(RAISED.isIdentity()).isFalse();
    }

    @Test
    void straightSidesAreCutAtTheLineAndStayStraight() {
        Outline warped = RAISED.mapped(Outline.rectangle(.2, .2, .8, .8));

        assertThat(warped.nodes())
                .hasSize(6)
                .noneMatch(Node::round)
                .allMatch(node -> node.in().equals(node.at()) && node.out().equals(node.at()));
        assertThat(warped.segments()).allMatch(Cubic::isLine);
        assertThat(warped.nodes().stream().filter(node -> Math.abs(node.at().y() - .4) < 1e-12))
                .hasSize(2);
    }

    @Test
    void aCurveIsBentWhereItCrossesAndSmoothElsewhere() {
        Outline warped = RAISED.mapped(Shapes.ellipse(.6, .5, .3, .3, 4));

        assertThat(warped.nodes()).hasSize(6);
        assertThat(warped.nodes().stream().filter(node -> !node.round()))
                .hasSize(2)
                .allSatisfy(node -> assertThat(node.at().y()).isCloseTo(.4, within(1e-15)));
    }

    @Test
    void aRoundNodeOnTheLineThatIsBentBecomesSharp() {
        Outline circle = Shapes.ellipse(.6, .6, .3, .3, 4);
        Outline turned = circle.mapped(p -> new Point(
                .6 + StrictMath.sqrt(.5) * (p.x() - p.y()), .6 + StrictMath.sqrt(.5) * (p.x() + p.y() - 1.2)));

        // Where the circle crosses upright it comes out straight: both sides keep what is upright.
        assertThat(RAISED.mapped(circle).nodes()).hasSize(4).allMatch(Node::round);
        assertThat(RAISED.mapped(turned).nodes()).hasSize(6);
        Outline slanted = Strokes.curved(
                List.of(new Point(.2, .3), new Point(.5, .6), new Point(.9, .7), new Point(.7, .2), new Point(.4, .1)));
        assertThat(RAISED.mapped(slanted).nodes().get(1).round()).isFalse();
    }

    @Test
    void aCurveThatOnlyTouchesGetsNoNode() {
        Point left = new Point(.2, .3);
        Point right = new Point(.8, .3);
        // Its lowest place is at .3 + 3/4 of .4.
        Outline bow = new Outline(List.of(
                new Node(left, left, new Point(.2, .7), false), new Node(right, new Point(.8, .7), right, false)));

        assertThat(RAISED.mapped(bow).nodes()).hasSize(2);
        assertThat(Warp.between(line(.59, .59), line(.4, .4), RATIO).mapped(bow).nodes())
                .hasSize(4);
        assertThat(Warp.between(line(.61, .61), line(.4, .4), RATIO).mapped(bow).nodes())
                .hasSize(2);
    }

    @Test
    void aCurveThatTurnsOnTheLineAndCrossesItGetsOneNode() {
        Path flex = new Path(List.of(
                new Node(new Point(.2, .5), new Point(.2, .5), new Point(.4, .7), true),
                new Node(new Point(.8, .7), new Point(.6, .5), new Point(.8, .7), true)));

        assertThat(RAISED.mapped(flex).nodes()).hasSize(3);
        assertThat(RAISED.mapped(flex).nodes().get(1).at().distance(new Point(.5, .4)))
                .isLessThan(1e-9);
    }

    @Test
    void aCurveCrossesThreeTimesAtMost() {
        Point start = new Point(.1, .3);
        Point end = new Point(.9, .9);
        Path wave = new Path(List.of(
                new Node(start, start, new Point(.9, 1.9), false), new Node(end, new Point(.1, -.7), end, false)));

        Path warped = RAISED.mapped(wave);

        assertThat(warped.nodes()).hasSize(5);
        assertThat(warped.nodes().subList(1, 4))
                .allSatisfy(node -> assertThat(node.at().y()).isCloseTo(.4, within(1e-12)));
        assertThat(warped.nodes().get(0).at().y()).isCloseTo(.2, within(1e-15));
        assertThat(warped.nodes().get(4).at()).isEqualTo(RAISED.mapped(end));
    }

    @Test
    void curvesAlongTheLineAndAlmostNothingGoWithIt() {
        Path along = Path.through(List.of(new Point(.1, .6), new Point(.9, .6), new Point(.9, .7)));
        assertThat(RAISED.mapped(along).nodes())
                .hasSize(3)
                .extracting(node -> node.at().y())
                .startsWith(.4, .4);
        assertThat(RAISED.mapped(new Path(List.of())).nodes()).isEmpty();
        assertThat(RAISED.mapped(Shapes.polygon(.3, .3)).nodes().get(0).at().y())
                .isCloseTo(.2, within(1e-15));
        assertThat(RAISED.mapped(line(.3, .3)).to().y()).isCloseTo(.2, within(1e-15));
    }

    /** Lines on the frame's edges, outside of it, steep, and moved out of the frame: always a warp that can be undone. */
    @ParameterizedTest
    @CsvSource({
        "0, 0, .3, .3",
        "1, 1, .3, .3",
        ".3, .3, 0, 0",
        ".3, .3, 1, 1",
        ".3, .3, -.5, -.5",
        "-.4, -.4, .3, .3",
        "1.7, 1.7, .5, .5",
        "-9, 9, -8, 10",
        "1e-9, 1e-9, .5, .5",
        "-.1, .5, .1, .7"
    })
    void oddLinesGiveAWarpThatCanBeUndone(double left, double right, double newLeft, double newRight) {
        Warp warp = Warp.between(line(left, right), line(newLeft, newRight), RATIO);
        Outline drawn = Shapes.ellipse(.6, .5, .4, .4, 8);

        Outline back = warp.inverse().mapped(warp.mapped(drawn));

        assertThat(back.moments().area()).isCloseTo(drawn.moments().area(), within(1e-9));
        assertThat(warp.stretchAbove()).isBetween(1e-3, 1e3);
        assertThat(warp.stretchBelow()).isBetween(1e-3, 1e3);
    }

    @Test
    void aSideOutsideTheFrameMovesUnstretched() {
        assertThat(level(0, .3).stretchAbove()).isEqualTo(1);
        assertThat(level(0, .3).mapped(new Point(.5, -.2)).y()).isCloseTo(.1, within(1e-15));
        assertThat(level(0, .3).mapped(new Point(.5, 1)).y()).isCloseTo(1, within(1e-15));
        assertThat(level(1.2, 1).stretchBelow()).isEqualTo(1);
    }

    @Test
    void uprightLinesAndFramesWithoutWidthAreRefused() {
        Line upright = new Line(new Point(.5, 0), new Point(.5, 1));

        assertThatThrownBy(() -> Warp.between(upright, line(.5, .5), RATIO))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Warp.between(line(.5, .5), upright, RATIO))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Warp.between(line(.5, .5), line(.4, .4), 0))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
