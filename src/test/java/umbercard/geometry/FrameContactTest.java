package umbercard.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static umbercard.geometry.FrameSide.BOTTOM;
import static umbercard.geometry.FrameSide.LEFT;
import static umbercard.geometry.FrameSide.RIGHT;
import static umbercard.geometry.FrameSide.TOP;
import static umbercard.geometry.Shapes.polygon;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class FrameContactTest {
    /** 11½ to 8½, which no grid of halves holds. */
    private static final double RATIO = 11.5 / 8.5;

    private static FrameContact contact(Region region) {
        return FrameContact.of(region, RATIO);
    }

    @Test
    void aBandAcrossReachesBothUprightSidesOnly() {
        FrameContact band = contact(Region.rectangle(0, .25, RATIO, .5));

        assertThat(band.stretches(LEFT)).containsExactly(new Stretch(.25, .5));
        assertThat(band.stretches(RIGHT)).containsExactly(new Stretch(.25, .5));
        assertThat(band.stretches(TOP)).isEmpty();
        assertThat(band.length(BOTTOM)).isZero();
        assertThat(band.share(LEFT)).isEqualTo(.25);
        assertThat(band.changes(LEFT)).containsExactly(new Point(0, .25), new Point(0, .5));
        assertThat(band.changes())
                .containsExactly(new Point(RATIO, .25), new Point(RATIO, .5), new Point(0, .5), new Point(0, .25));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 4.0 / 3, 1.35, 11.5 / 8.5, Math.PI, .1, .7071067811865476})
    void theWholeFrameReachesAllOfEverySide(double ratio) {
        FrameContact whole = FrameContact.of(Region.rectangle(0, 0, ratio, 1), ratio);

        for (FrameSide side : FrameSide.values()) {
            assertThat(whole.stretches(side)).containsExactly(new Stretch(0, side.length(ratio)));
            assertThat(whole.share(side)).isEqualTo(1);
        }
        assertThat(whole.changes()).isEmpty();
    }

    @Test
    void nothingReachesNothing() {
        assertThat(contact(Region.empty()).changes()).isEmpty();
        assertThat(contact(Region.rectangle(.1, .1, 1, .9)).changes()).isEmpty();
        assertThat(contact(Region.rectangle(2, 2, 3, 3)).stretches(RIGHT)).isEmpty();
        assertThatThrownBy(() -> FrameContact.of(Region.empty(), 0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theValueChangesInACornerWhereItsSidesDiffer() {
        FrameContact lower = contact(Region.of(polygon(0, 0, RATIO, 1, 0, 1)));

        assertThat(lower.stretches(TOP)).isEmpty();
        assertThat(lower.share(LEFT)).isEqualTo(1);
        assertThat(lower.share(BOTTOM)).isEqualTo(1);
        assertThat(lower.changes(BOTTOM)).isEmpty();
        assertThat(lower.changes()).containsExactly(new Point(0, 0), new Point(RATIO, 1));
    }

    @Test
    void aRegionInACornerChangesOnceOnEachOfItsSides() {
        FrameContact corner = contact(Region.rectangle(0, 0, .5, .25));

        assertThat(corner.stretches(TOP)).containsExactly(new Stretch(0, .5));
        assertThat(corner.stretches(LEFT)).containsExactly(new Stretch(0, .25));
        assertThat(corner.changes()).containsExactly(new Point(.5, 0), new Point(0, .25));
    }

    @Test
    void whatTouchesASideInAPointDoesNotReachIt() {
        assertThat(contact(Region.of(polygon(.5, 0, .75, .5, .25, .5))).changes())
                .isEmpty();
    }

    @Test
    void piecesThatMeetInAPointOnASideChangeNothingThere() {
        Region notched = Region.rectangle(0, 0, 1, .5).minus(Region.of(polygon(.5, 0, .75, .25, .25, .25)));

        assertThat(contact(notched).stretches(TOP)).containsExactly(new Stretch(0, 1));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-12, 1e-10, 1e-8, 5e-7})
    void sliversShowOnNoSide(double thin) {
        Region gap = Region.rectangle(thin, thin, RATIO - thin, 1 - thin);
        Region sliver = Region.rectangle(0, 0, RATIO, thin).union(Region.rectangle(0, 0, thin, 1));

        assertThat(contact(gap).changes()).isEmpty();
        assertThat(contact(gap).share(RIGHT)).isEqualTo(1);
        assertThat(contact(sliver).changes()).isEmpty();
        assertThat(contact(sliver).length(TOP)).isZero();
    }

    @Test
    void gapsAndStretchesTooShortToSeeArePassedOver() {
        Region cut = Region.rectangle(0, 0, 1, .5).minus(Region.rectangle(.5, 0, .5 + 4e-7, .25));
        Region strip = Region.rectangle(.5, 0, .5 + 4e-7, .25);

        assertThat(contact(cut).stretches(TOP)).containsExactly(new Stretch(0, 1));
        assertThat(contact(strip).stretches(TOP)).isEmpty();
    }

    @Test
    void whatLiesOutsideTheFrameIsLeftOut() {
        FrameContact band = contact(Region.rectangle(-1, .25, 3, .5));

        assertThat(band.stretches(LEFT)).containsExactly(new Stretch(.25, .5));
        assertThat(band.stretches(RIGHT)).containsExactly(new Stretch(.25, .5));
    }

    @ParameterizedTest
    @EnumSource
    void aHoleOpenToASideLeavesTwoStretches(FrameSide side) {
        Point a = side.at(.25, RATIO);
        Point b = side.at(.5, RATIO);
        Region open = Region.rectangle(0, 0, RATIO, 1)
                .minus(Region.rectangle(.25, .25, .5, .5))
                .minus(Region.rectangle(
                        Math.min(a.x(), .25), Math.min(a.y(), .25), Math.max(b.x(), .5), Math.max(b.y(), .5)));

        FrameContact contact = contact(open);

        assertThat(contact.stretches(side)).containsExactly(new Stretch(0, .25), new Stretch(.5, side.length(RATIO)));
        assertThat(contact.changes()).containsExactlyInAnyOrder(a, b);
    }

    /** Against the spans of a row of the border close inside the side, and the mirror image. */
    @Property(seed = "31")
    void stretchesAgreeWithARowJustInsideTheSide(@ForAll long seed) {
        Random random = new Random(seed);
        Region region = Region.of(Strokes.wandering(random, 3 + random.nextInt(60), .3 + random.nextDouble()))
                .intersect(Region.rectangle(0, 0, RATIO, 1));

        FrameContact contact = contact(region);
        FrameContact mirrored = contact(region.mirrored(RATIO));

        double depth = 1e-5;
        assertThat(contact.length(TOP)).isCloseTo(row(region, depth), within(5e-3));
        assertThat(contact.length(BOTTOM)).isCloseTo(row(region, 1 - depth), within(5e-3));
        assertThat(mirrored.length(LEFT)).isCloseTo(contact.length(RIGHT), within(1e-9));
        assertThat(mirrored.length(TOP)).isCloseTo(contact.length(TOP), within(1e-9));
        assertThat(mirrored.changes()).hasSameSizeAs(contact.changes());
        assertThat(contact.changes().size() % 2).isZero();
    }

    private static double row(Region region, double y) {
        return Rows.length(Rows.filled(region.outlines(), y), RATIO);
    }

    @Test
    void stretchesRunForward() {
        assertThatThrownBy(() -> new Stretch(1, .5)).isInstanceOf(IllegalArgumentException.class);
    }
}
