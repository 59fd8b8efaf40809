package umbercard.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import umbercard.geometry.Line;
import umbercard.geometry.Point;

class FramingTest {
    private static final Framing LANDSCAPE = new Framing(1.5, 1.25);
    private static final Framing PORTRAIT = new Framing(0.75, 0.8);
    private static final Offset<Double> SAME = within(1e-9);

    private record Lying(Framing on, Frame frame) {}

    @Provide
    Arbitrary<Lying> anywhere() {
        Arbitrary<Double> ratios = Arbitraries.doubles().between(0.5, 2);
        Arbitrary<Double> shares = Arbitraries.doubles().between(-0.2, 1.2);
        Arbitrary<Point> centers = Combinators.combine(shares, shares).as(Point::new);
        Arbitrary<Double> heights = Arbitraries.doubles().between(0.1, 2);
        Arbitrary<Double> tilts = Arbitraries.doubles().between(-179, 180);
        Arbitrary<Boolean> mirrored = Arbitraries.of(true, false);
        return Combinators.combine(ratios, ratios, centers, heights, tilts, mirrored)
                .as((photograph, opening, center, height, tilt, mirror) ->
                        new Lying(new Framing(photograph, opening), new Frame(center, height, tilt, mirror)));
    }

    @Provide
    Arbitrary<Lying> inside() {
        return anywhere().map(lying -> new Lying(lying.on(), lying.on().heldInside(lying.frame())));
    }

    /** What each corner of the frame covers, told by the mapping rather than by what {@code isInside} reckons with. */
    private static Stream<Point> corners(Lying lying) {
        double right = lying.on().frameRatio();
        return Stream.of(new Point(0, 0), new Point(right, 0), new Point(right, 1), new Point(0, 1))
                .map(corner -> lying.on().onPhotograph(lying.frame(), corner));
    }

    private static void assertSame(Point found, Point wanted) {
        assertThat(found.x()).isCloseTo(wanted.x(), SAME);
        assertThat(found.y()).isCloseTo(wanted.y(), SAME);
    }

    private static void assertSame(Frame found, Frame wanted) {
        assertSame(found.center(), wanted.center());
        assertThat(found.height()).isCloseTo(wanted.height(), SAME);
        assertThat(found.tilt()).isCloseTo(wanted.tilt(), SAME);
        assertThat(found.mirrored()).isEqualTo(wanted.mirrored());
    }

    /** Worked out by hand: half the height of a 3:2 photograph, its middle at its own. */
    @ParameterizedTest
    @CsvSource({
        "0, false, 0, 0, .2916667, .25",
        "0, true, 0, 0, .7083333, .25",
        "0, false, 1.25, 1, .7083333, .75",
        "90, false, 0, 0, .3333333, .8125",
        "90, true, 0, 0, .3333333, .1875",
        "-90, false, 0, 0, .6666667, .1875"
    })
    void placesOfTheFrameLieWhereTheyShouldOnThePhotograph(
            double tilt, boolean mirrored, double x, double y, double acrossShare, double downShare) {
        Point place = LANDSCAPE.onPhotograph(new Frame(new Point(.5, .5), .5, tilt, mirrored), new Point(x, y));
        assertThat(place.x()).isCloseTo(acrossShare, within(1e-6));
        assertThat(place.y()).isCloseTo(downShare, within(1e-6));
    }

    @Property(tries = 100, seed = "1")
    void aPlaceComesBackFromThePhotograph(
            @ForAll("anywhere") Lying lying,
            @ForAll @DoubleRange(min = -1, max = 2) double x,
            @ForAll @DoubleRange(min = -1, max = 2) double y) {
        Point on = lying.on().onPhotograph(lying.frame(), new Point(x, y));
        assertSame(lying.on().inFrame(lying.frame(), on), new Point(x, y));
    }

    @Property(tries = 200, seed = "2")
    void whatIsHeldInsideHasAllItsCornersOnThePhotograph(@ForAll("inside") Lying lying) {
        assertThat(corners(lying)).allSatisfy(corner -> {
            assertThat(corner.x()).isBetween(-1e-9, 1 + 1e-9);
            assertThat(corner.y()).isBetween(-1e-9, 1 + 1e-9);
        });
        assertThat(lying.on().isInside(lying.frame())).isTrue();
        assertThat(lying.on().shareBare(lying.frame())).isCloseTo(0, within(1e-6));
    }

    @Property(tries = 200, seed = "3")
    void whatIsInsideIsSo(@ForAll("anywhere") Lying lying) {
        boolean all = corners(lying)
                .allMatch(corner ->
                        corner.x() >= -1e-9 && corner.x() <= 1 + 1e-9 && corner.y() >= -1e-9 && corner.y() <= 1 + 1e-9);
        assertThat(lying.on().isInside(lying.frame())).isEqualTo(all);
    }

    @Property(tries = 100, seed = "4")
    void insideStaysAsItIs(@ForAll("inside") Lying lying) {
        assertSame(lying.on().heldInside(lying.frame()), lying.frame());
    }

    @Property(tries = 100, seed = "5")
    void scalingAboutAPlaceKeepsItWhereItIsSeen(
            @ForAll("anywhere") Lying lying,
            @ForAll @DoubleRange(min = 0, max = 1) double x,
            @ForAll @DoubleRange(min = 0, max = 1) double y,
            @ForAll @DoubleRange(min = 0.2, max = 4) double factor) {
        Point about = new Point(x, y);
        Frame scaled = lying.on().scaled(lying.frame(), about, factor);
        assertSame(lying.on().inFrame(scaled, about), lying.on().inFrame(lying.frame(), about));
        assertThat(scaled.tilt()).isEqualTo(lying.frame().tilt());
    }

    @Property(tries = 200, seed = "6")
    void asMuchAsIsMostInsideStaysInsideAndMoreDoesNot(
            @ForAll("inside") Lying lying,
            @ForAll @DoubleRange(min = 0, max = 1) double x,
            @ForAll @DoubleRange(min = 0, max = 1) double y) {
        Point about =
                lying.on().onPhotograph(lying.frame(), new Point(x * lying.on().frameRatio(), y));
        double most = lying.on().mostInside(lying.frame(), about, 50);
        Frame largest = lying.frame()
                .withCenter(about.toward(lying.frame().center(), most))
                .withHeight(most * lying.frame().height());
        assertThat(lying.on().isInside(largest)).isTrue();
        if (most < 50) {
            Frame larger = lying.frame()
                    .withCenter(about.toward(lying.frame().center(), 1.01 * most))
                    .withHeight(1.01 * most * lying.frame().height());
            assertThat(lying.on().isInside(larger)).isFalse();
        }
    }

    @Property(tries = 100, seed = "7")
    void turnedThereAndBackItLiesAsBefore(
            @ForAll("anywhere") Lying lying, @ForAll @DoubleRange(min = -170, max = 170) double degrees) {
        Point about = new Point(.3, .8);
        Frame turned = lying.on().turned(lying.frame(), about, degrees);
        assertSame(lying.on().inFrame(turned, about), lying.on().inFrame(lying.frame(), about));
        assertSame(lying.on().turned(turned, about, -degrees), lying.frame());
    }

    @Property(tries = 100, seed = "8")
    void leveledByALineThatLineRunsLevel(
            @ForAll("anywhere") Lying lying,
            @ForAll @DoubleRange(min = 0, max = 1) double left,
            @ForAll @DoubleRange(min = 0, max = 1) double right) {
        Line line = new Line(new Point(.1, left), new Point(.9, right));
        Frame level = lying.on().leveled(lying.frame(), line);
        Point from = lying.on().inFrame(level, line.from());
        Point to = lying.on().inFrame(level, line.to());
        assertThat(from.y()).isCloseTo(to.y(), within(1e-8));
        assertThat(from.x() < to.x()).isEqualTo(!level.mirrored());
        assertSame(level.center(), lying.frame().center());
    }

    @Property(tries = 100, seed = "9")
    void leveledByALineAndBackItLiesAsBefore(
            @ForAll("anywhere") Lying lying, @ForAll @DoubleRange(min = 0, max = 1) double right) {
        Frame upright = lying.frame().withTilt(0);
        Frame level = lying.on().leveled(upright, new Line(new Point(.1, .5), new Point(.9, right)));
        assertSame(lying.on().leveled(level, new Line(new Point(.2, .4), new Point(.7, .4))), upright);
    }

    @Property(tries = 50, seed = "10")
    void mirroredTwiceIsNothingAndCoversTheSamePart(@ForAll("anywhere") Lying lying) {
        Frame once = lying.on().mirrored(lying.frame());
        assertThat(lying.on().mirrored(once)).isEqualTo(lying.frame());
        assertThat(once.mirrored()).isNotEqualTo(lying.frame().mirrored());
        double right = lying.on().frameRatio();
        assertSame(
                lying.on().onPhotograph(once, new Point(0, 0)),
                lying.on().onPhotograph(lying.frame(), new Point(right, 0)));
    }

    @Property(tries = 100, seed = "11")
    void aMoveIsSeenAsItWasMade(@ForAll("anywhere") Lying lying) {
        Frame moved = lying.on().moved(lying.frame(), .2, -.1);
        Point middle = lying.on().inFrame(lying.frame(), moved.center());
        assertSame(middle, new Point(lying.on().frameRatio() / 2 + .2, .4));
    }

    @Test
    void aLineIsAsSteepWhicheverEndComesFirst() {
        // A rise of 0.15 over 1.5 × 0.5 of the photograph's height.
        Line rising = new Line(new Point(.25, .6), new Point(.75, .45));
        assertThat(LANDSCAPE.tilt(rising)).isCloseTo(11.3099325, within(1e-6));
        assertThat(LANDSCAPE.tilt(new Line(rising.to(), rising.from()))).isCloseTo(11.3099325, within(1e-6));
        assertThat(LANDSCAPE.tilt(new Line(new Point(.5, .9), new Point(.5, .1))))
                .isEqualTo(90);
    }

    @Test
    void theLargestFrameTouchesTwoSidesInLandscapeAndInPortrait() {
        assertThat(LANDSCAPE.largest()).isEqualTo(new Frame(new Point(.5, .5), 1, 0, false));
        assertThat(PORTRAIT.largest().height()).isCloseTo(.9375, SAME);
        assertThat(PORTRAIT.isInside(PORTRAIT.largest())).isTrue();
        assertThat(LANDSCAPE.shareUsed(LANDSCAPE.largest())).isCloseTo(1.25 / 1.5, within(1e-6));
    }

    @Test
    void itNeverGetsTooSmallToPaintFromNorFarTooLarge() {
        Point middle = new Point(.5, .5);
        assertThat(LANDSCAPE.scaled(LANDSCAPE.largest(), middle, 1e-9).height()).isEqualTo(.05);
        assertThat(LANDSCAPE.scaled(LANDSCAPE.largest(), middle, 1e9).height()).isEqualTo(3);
    }

    @Test
    void tellsHowMuchIsUsedAndHowMuchIsBare() {
        Frame half = new Frame(new Point(0, .5), 1, 0, false);
        assertThat(LANDSCAPE.shareBare(half)).isCloseTo(.5, within(1e-6));
        assertThat(LANDSCAPE.shareUsed(half)).isCloseTo(.625 / 1.5, within(1e-6));
        assertThat(LANDSCAPE.shareUsed(new Frame(new Point(.5, .5), .4, 30, true)))
                .isCloseTo(.16 * 1.25 / 1.5, within(1e-6));
    }
}
