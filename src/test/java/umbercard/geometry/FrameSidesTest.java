package umbercard.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class FrameSidesTest {
    private static final FrameSides SIDES = new FrameSides(1.35);

    private static Spans on(FrameSide side, Outline outline) {
        Hatching covered = SIDES.of(outline);
        Spans spans = new Spans();
        int line = FrameSides.line(side);
        if (covered.first() <= line && line < covered.end()) {
            covered.addTo(spans, line);
        }
        return spans;
    }

    private static void stretch(Spans spans, double from, double to) {
        assertThat(spans.size()).isOne();
        assertThat(spans.from(0)).isCloseTo(from, within(2e-6));
        assertThat(spans.to(0)).isCloseTo(to, within(2e-6));
    }

    @Test
    void anOutlineThatRunsOutReachesTheSide() {
        Outline slope = Outline.polygon(List.of(new Point(-.5, .4), new Point(.5, .4), new Point(-.5, 1.4)));

        stretch(on(FrameSide.LEFT, slope), .4, .9);
        assertThat(on(FrameSide.BOTTOM, slope).size()).isZero();
        assertThat(on(FrameSide.TOP, slope).size()).isZero();
        assertThat(on(FrameSide.RIGHT, slope).size()).isZero();
    }

    @Test
    void anOutlineAlongASideReachesIt() {
        Outline corner = Outline.rectangle(.9, .25, 1.35, 1);

        stretch(on(FrameSide.RIGHT, corner), .25, 1);
        stretch(on(FrameSide.BOTTOM, corner), .9, 1.35);
    }

    @Test
    void anOutlineThatOnlyComesNearReachesNone() {
        Outline near = Outline.rectangle(2e-6, 2e-6, 1.35 - 2e-6, 1 - 2e-6);

        for (FrameSide side : FrameSide.values()) {
            assertThat(on(side, near).size()).isZero();
        }
    }

    @Test
    void whatCoversTheFrameCoversWholeSides() {
        for (FrameSide side : FrameSide.values()) {
            assertThat(on(side, Outline.rectangle(-1, -1, 3, 3))).isEqualTo(SIDES.whole(FrameSides.line(side)));
        }
    }
}
