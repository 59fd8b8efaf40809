package umbercard.desk.framing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import umbercard.geometry.Point;
import umbercard.model.Frame;
import umbercard.model.Framing;

class FrameGripTest {
    private static final Framing FRAMING = new Framing(1.5, 1.25);
    private static final Frame MIDDLE = new Frame(new Point(.5, .5), .5, 0, false);

    private static Sight sight(Frame frame) {
        return Sight.of(FRAMING, frame, 660, 440, 24);
    }

    private static Point pixel(Frame frame, double x, double y) {
        return sight(frame).onScreen(FRAMING.onPhotograph(frame, new Point(x, y)));
    }

    private static FrameGrip grip(Frame frame, Point at, boolean turning, boolean inside) {
        return FrameGrip.at(at, turning, FRAMING, frame, sight(frame), inside);
    }

    @Test
    void aPressTakesHoldOfWhatIsThere() {
        assertThat(grip(MIDDLE, pixel(MIDDLE, .6, .5), false, true)).isInstanceOf(FrameGrip.Whole.class);
        assertThat(grip(MIDDLE, pixel(MIDDLE, 1.25, 1).plus(5, -6), false, true))
                .isInstanceOf(FrameGrip.Corner.class);
        assertThat(grip(MIDDLE, pixel(MIDDLE, 1.6, .5), false, true)).isInstanceOf(FrameGrip.Turn.class);
        assertThat(grip(MIDDLE, pixel(MIDDLE, .6, .5), true, true)).isInstanceOf(FrameGrip.Turn.class);
    }

    @Test
    void theWholePhotographAndTheFrameAreInView() {
        Frame out = new Frame(new Point(1.1, .2), .9, 20, true);
        for (Point corner : new Point[] {new Point(0, 0), new Point(1, 0), new Point(1, 1), new Point(0, 1)}) {
            Point seen = sight(out).onScreen(corner);
            assertThat(seen.x()).isBetween(23.9, 636.1);
            assertThat(seen.y()).isBetween(23.9, 416.1);
        }
        assertThat(pixel(out, 0, 0).y()).isBetween(23.9, 416.1);
        assertThat(pixel(out, 1.25, 1).x()).isBetween(23.9, 636.1);
    }

    @Property(tries = 100, seed = "1")
    void thePlaceUnderTheHandStaysUnderItWhileTheFrameMoves(
            @ForAll @IntRange(min = -40, max = 40) int right,
            @ForAll @IntRange(min = -40, max = 40) int down,
            @ForAll @DoubleRange(min = -8, max = 8) double tilt,
            @ForAll boolean mirrored) {
        Frame from = MIDDLE.withTilt(tilt).withMirrored(mirrored);
        Point taken = pixel(from, .6, .4);
        Frame moved = grip(from, taken, false, true).to(taken.plus(right, down));
        Point held = sight(from).onScreen(FRAMING.onPhotograph(moved, new Point(.6, .4)));
        assertThat(held.x()).isCloseTo(taken.x() + right, within(1e-6));
        assertThat(held.y()).isCloseTo(taken.y() + down, within(1e-6));
    }

    @Property(tries = 200, seed = "2")
    void whateverTheHandDoesAFrameKeptInsideIsInside(
            @ForAll @IntRange(min = -100, max = 800) int x,
            @ForAll @IntRange(min = -100, max = 600) int y,
            @ForAll @IntRange(min = -100, max = 800) int toX,
            @ForAll @IntRange(min = -100, max = 600) int toY,
            @ForAll boolean turning,
            @ForAll @DoubleRange(min = -180, max = 180) double tilt,
            @ForAll boolean mirrored) {
        Frame from = FRAMING.heldInside(MIDDLE.withTilt(tilt).withMirrored(mirrored));
        Frame to = grip(from, new Point(x, y), turning, true).to(new Point(toX, toY));
        assertThat(FRAMING.isInside(to)).isTrue();
        assertThat(to.mirrored()).isEqualTo(mirrored);
    }

    @Test
    void aCornerScalesAboutTheOppositeOne() {
        Point taken = pixel(MIDDLE, 1.25, 1);
        Point anchor = pixel(MIDDLE, 0, 0);
        Frame half = grip(MIDDLE, taken, false, true).to(anchor.toward(taken, .5));
        assertThat(half.height()).isCloseTo(.25, within(1e-9));
        Point kept = FRAMING.onPhotograph(half, new Point(0, 0));
        assertThat(kept.distance(FRAMING.onPhotograph(MIDDLE, new Point(0, 0)))).isLessThan(1e-9);
        Frame same = grip(MIDDLE, taken.plus(4, 3), false, true).to(taken.plus(4, 3));
        assertThat(same.height()).isCloseTo(.5, within(1e-9));
    }

    @Test
    void aCornerStopsAtThePhotographsEdgeOrReachesOut() {
        Point taken = pixel(MIDDLE, 1.25, 1);
        Frame stopped = grip(MIDDLE, taken, false, true).to(taken.plus(900, 900));
        assertThat(FRAMING.isInside(stopped)).isTrue();
        assertThat(FRAMING.onPhotograph(stopped, new Point(1.25, 1)).y()).isCloseTo(1, within(1e-9));
        Frame out = grip(MIDDLE, taken, false, false).to(taken.plus(900, 900));
        assertThat(FRAMING.isInside(out)).isFalse();
    }

    @Property(tries = 100, seed = "3")
    void thePhotographTurnsWithTheHand(
            @ForAll @DoubleRange(min = -40, max = 40) double degrees, @ForAll boolean mirrored) {
        Frame from = MIDDLE.withTilt(1).withMirrored(mirrored);
        Point middle = sight(from).onScreen(from.center());
        double turn = Math.toRadians(degrees);
        Frame turned = grip(from, middle.plus(200, 0), true, false)
                .to(middle.plus(200 * Math.cos(turn), -200 * Math.sin(turn)));
        // What was to the right of the middle is now seen the same way round as the hand is.
        Sight after = sight(from).turned(from.center(), turned.tilt() - from.tilt());
        Point place = sight(from).onPhotograph(middle.x() + 200, middle.y());
        Point seen = after.onScreen(place);
        double snapped = Math.abs(turned.tilt()) == 0 ? 1 : 1e-6;
        assertThat(seen.x()).isCloseTo(middle.x() + 200 * Math.cos(turn), within(snapped));
        assertThat(seen.y()).isCloseTo(middle.y() - 200 * Math.sin(turn), within(snapped));
    }

    @Test
    void nearlyUprightIsMeantToBeUpright() {
        Frame from = MIDDLE.withTilt(3);
        Point middle = sight(from).onScreen(from.center());
        double turn = Math.toRadians(2.9);
        Frame turned = grip(from, middle.plus(200, 0), true, true)
                .to(middle.plus(200 * Math.cos(turn), -200 * Math.sin(turn)));
        assertThat(turned.tilt()).isZero();
    }
}
