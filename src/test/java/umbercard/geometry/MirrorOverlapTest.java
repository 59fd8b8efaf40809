package umbercard.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static umbercard.geometry.Shapes.ellipse;
import static umbercard.geometry.Shapes.polygon;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class MirrorOverlapTest {
    private static final double RATIO = 11.5 / 8.5;

    @Test
    void aBandIsItsOwnImageAndAHalfSharesNothing() {
        assertThat(MirrorOverlap.of(Region.rectangle(0, .2, RATIO, .6), RATIO).share())
                .isEqualTo(1);
        assertThat(MirrorOverlap.of(Region.rectangle(0, 0, RATIO / 2 - .001, 1), RATIO)
                        .share())
                .isZero();
        assertThat(MirrorOverlap.of(Region.empty(), RATIO)).isEqualTo(new MirrorOverlap(0, 0));
        assertThat(MirrorOverlap.of(Region.empty(), RATIO).share()).isZero();
    }

    @Test
    void twoThirdsFromTheLeftShareAThird() {
        MirrorOverlap overlap = MirrorOverlap.of(Region.rectangle(0, 0, 2, 1), 3);

        assertThat(overlap.shared()).isCloseTo(1, within(1e-9));
        assertThat(overlap.together()).isCloseTo(3, within(1e-9));
        assertThat(overlap.share()).isCloseTo(1.0 / 3, within(1e-9));
    }

    /** A disc of radius 1 beside the middle line and its image are the vesica of geometry_checks.csv. */
    @Test
    void aDiscBesideTheMiddleSharesALens() {
        double ratio = 4;

        MirrorOverlap overlap = MirrorOverlap.of(Region.of(ellipse(ratio / 2 + .5, .5, 1, 1, 64)), ratio);

        assertThat(overlap.shared()).isCloseTo(1.22836969861, within(1e-5));
        assertThat(overlap.together()).isCloseTo(2 * Math.PI - 1.22836969861, within(1e-5));
    }

    @Test
    void holesAreTurnedOverToo() {
        Region holed = Region.rectangle(0, 0, 3, 1).minus(Region.rectangle(.5, .25, 1, .75));

        Region turned = holed.mirrored(3);

        assertThat(turned.area()).isEqualTo(holed.area());
        assertThat(turned.contains(new Point(2.25, .5))).isFalse();
        assertThat(turned.contains(new Point(.75, .5))).isTrue();
        assertThat(MirrorOverlap.of(holed, 3).shared()).isCloseTo(3 - .5, within(1e-9));
        assertThat(Region.of(polygon(0, 0, 1, 0, 0, 1)).mirrored(1).contains(new Point(.9, .8)))
                .isTrue();
    }

    /** Against rows of the drawn curves, turned over span by span. */
    @Property(seed = "34", tries = 50)
    void sharedAreasAgreeWithRows(@ForAll long seed) {
        Random random = new Random(seed);
        Region region = Region.of(Strokes.wandering(random, 3 + random.nextInt(40), .2 + random.nextDouble()))
                .intersect(Region.rectangle(0, 0, RATIO, 1));
        MirrorOverlap overlap = MirrorOverlap.of(region, RATIO);

        int rows = 400;
        double shared = 0;
        double together = 0;
        for (int i = 0; i < rows; i++) {
            List<Rows.Span> spans = Rows.filled(region.outlines(), (i + .5) / rows);
            List<Rows.Span> turned = new ArrayList<>();
            spans.forEach(span -> turned.add(0, new Rows.Span(RATIO - span.to(), RATIO - span.from())));
            List<Rows.Span> others = Rows.minus(spans, turned);
            shared += (Rows.length(spans, RATIO) - Rows.length(others, RATIO)) / rows;
            together += Rows.length(Rows.union(spans, turned), RATIO) / rows;
        }
        assertThat(overlap.shared()).isCloseTo(shared, within(2e-3));
        assertThat(overlap.together()).isCloseTo(together, within(2e-3));
        assertThat(region.mirrored(RATIO).mirrored(RATIO).area()).isEqualTo(region.area());
        assertThat(MirrorOverlap.of(region.union(region.mirrored(RATIO)), RATIO).share())
                .isBetween(region.isEmpty() ? 0 : 1 - 1e-6, 1.0);
    }
}
