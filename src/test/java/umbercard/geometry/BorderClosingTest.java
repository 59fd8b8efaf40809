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

class BorderClosingTest {
    private static final double RATIO = 1.5;
    private static final double REACH = .01;
    private static final Region FRAME = Region.rectangle(0, 0, RATIO, 1);

    private static Path stroke(double... xy) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new Point(xy[i], xy[i + 1]));
        }
        return Path.through(points);
    }

    /** What the closed stroke covers of the frame. */
    private static double covered(Path stroke, boolean otherSide) {
        Outline outline = BorderClosing.close(stroke, RATIO, REACH, otherSide);
        return Region.of(outline).intersect(FRAME).area();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "left to right,                      0, .6, 1.5, .6, .6",
        "left to right high up,              0, .3, 1.5, .3, 1.05",
        "right to left high up,            1.5, .3, 0, .3, 1.05",
        "right to left,                    1.5, .6, 0, .6, .6",
        "left to right from well outside, -.3, .6, 1.9, .6, .6",
        "left to right not quite there,   .01, .6, 1.495, .6, .6",
        "lower side to lower side,         .2, 1, .8, 1, 0",
        "upper side to upper side,         .2, -.1, .8, 0, 0",
        "around the upper left corner,      0, .4, .5, 0, .1",
        "around the upper right corner,   1.1, -.2, 1.5, .2, .02",
        "around the lower right corner,   1.5, .5, 1, 1, .125",
        "around the lower left corner,     .4, 1, 0, .8, .04",
        "upper to lower left of middle,    .5, 0, .5, 1, .5",
        "upper to lower right of middle,  1.1, 0, 1.1, 1, .4",
        "beyond two corners,              -.5, 1.5, 2, -.5, 0.75"
    })
    void theBorderIsFollowedOnTheSideOneExpects(String what, double x1, double y1, double x2, double y2, double area) {
        Path stroke = stroke(x1, y1, x2, y2);

        assertThat(covered(stroke, false)).isCloseTo(area, within(1e-8));
        assertThat(covered(stroke, true)).isCloseTo(RATIO - area, within(1e-8));
    }

    @Test
    void anEndInsideClosesStraight() {
        Path hook = stroke(0, .5, .5, .5, .5, .9);

        assertThat(BorderClosing.close(hook, RATIO, REACH, false)).isEqualTo(new Outline(hook.nodes()));
        assertThat(covered(hook, true)).isEqualTo(covered(hook, false)).isCloseTo(.1, within(1e-8));
    }

    @Test
    void anEndJustWithinReachGoesOutAndOneBeyondDoesNot() {
        assertThat(covered(stroke(REACH, .5, .7, .3, 1.5, .5), false)).isGreaterThan(.5);
        assertThat(covered(stroke(REACH * 1.01, .5, .7, .3, 1.5, .5), false)).isLessThan(.2);
    }

    @Test
    void theBorderPartLiesOnTheFrameWithItsCorners() {
        Outline closed = BorderClosing.close(stroke(-.1, .6, .7, .5, 1.6, .7), RATIO, REACH, false);

        assertThat(closed.nodes().subList(3, closed.nodes().size()))
                .extracting(Node::at)
                .containsExactly(new Point(1.5, .7), new Point(1.5, 1), new Point(0, 1), new Point(0, .6));
    }

    @Test
    void aLoopFromOnePlaceOfTheBorderHasTwoSidesToo() {
        Path loop = stroke(0, .5, .4, .3, .4, .7, 0, .5);

        Path otherWayRound = stroke(0, .5, .4, .7, .4, .3, 0, .5);

        assertThat(covered(loop, false)).isCloseTo(.08, within(1e-8));
        assertThat(covered(loop, true)).isCloseTo(RATIO - .08, within(1e-8));
        assertThat(covered(otherWayRound, true)).isCloseTo(RATIO - .08, within(1e-8));
    }

    @Test
    void pullsThatAnOpenStrokeDoesNotDrawAreNotDrawnClosed() {
        Point a = new Point(0, .5);
        Point b = new Point(1.5, .5);
        Path wild = new Path(List.of(new Node(a, new Point(.9, .1), a, true), new Node(b, b, new Point(.1, .9), true)));

        assertThat(covered(wild, false)).isCloseTo(.75, within(1e-8));
    }

    @Test
    void aPointStaysAPoint() {
        assertThat(BorderClosing.close(stroke(.3, .3), RATIO, REACH, false).nodes())
                .hasSize(1);
        assertThat(BorderClosing.close(stroke(), RATIO, REACH, true).nodes()).isEmpty();
    }

    @Test
    void aFrameHasAWidth() {
        assertThatThrownBy(() -> BorderClosing.close(stroke(), 0, REACH, false))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> BorderClosing.close(stroke(), RATIO, -1, false))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** A stroke that crosses the frame once cuts it in two: one way round covers one part, the other way the other. */
    @Property(seed = "4")
    void theTwoWaysShareTheFrame(@ForAll long seed) {
        Random random = new Random(seed);
        Path cut = stroke(
                outside(random, RATIO).x(),
                outside(random, RATIO).y(),
                .1 + random.nextDouble() * 1.3,
                .1 + random.nextDouble() * .8);
        List<Node> nodes = new ArrayList<>(cut.nodes());
        nodes.set(0, Node.sharp(outside(random, RATIO)));
        nodes.add(Node.sharp(outside(random, RATIO)));

        assertThat(covered(new Path(nodes), false) + covered(new Path(nodes), true))
                .isCloseTo(RATIO, within(1e-8));
    }

    private static Point outside(Random random, double ratio) {
        double along = random.nextDouble() * 3 - 1;
        double off = random.nextDouble() * .5;
        return switch (random.nextInt(4)) {
            case 0 -> new Point(along * ratio, -off);
            case 1 -> new Point(along * ratio, 1 + off);
            case 2 -> new Point(-off, along);
            default -> new Point(ratio + off, along);
        };
    }
}
