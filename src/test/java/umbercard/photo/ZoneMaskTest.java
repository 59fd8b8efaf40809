package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import umbercard.geometry.Node;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.geometry.Region;

class ZoneMaskTest {
    private static long count(boolean[] inside) {
        return IntStream.range(0, inside.length).filter(i -> inside[i]).count();
    }

    @Test
    void aRectangleIsThePixelsInIt() {
        boolean[] inside = ZoneMask.of(List.of(Outline.rectangle(0.25, 0.5, 1, 1)), 150, 100);
        for (int i = 0; i < inside.length; i++) {
            assertThat(inside[i]).isEqualTo(i % 150 >= 25 && i % 150 < 100 && i / 150 >= 50);
        }
    }

    @Test
    void aCurveCoversItsArea() {
        Outline round = new Outline(List.of(
                new Node(new Point(.7, .2), new Point(.5, .2), new Point(.9, .2), true),
                new Node(new Point(.7, .8), new Point(1.1, .9), new Point(.3, .7), true)));
        boolean[] inside = ZoneMask.of(List.of(round), 600, 400);
        assertThat((double) count(inside) / (400 * 400))
                .isCloseTo(Region.of(round).area(), within(1e-3));
    }

    @Test
    void whatOverlapsCountsOnce() {
        boolean[] inside =
                ZoneMask.of(List.of(Outline.rectangle(0, 0, .6, 1), Outline.rectangle(.4, 0, 1, 1)), 100, 100);
        assertThat(count(inside)).isEqualTo(10_000);
    }

    @Test
    void holesRunTheOtherWay() {
        Outline hole =
                Outline.polygon(List.of(new Point(.2, .2), new Point(.2, .4), new Point(.4, .4), new Point(.4, .2)));
        boolean[] inside = ZoneMask.of(List.of(Outline.rectangle(0, 0, 1, 1), hole), 100, 100);
        assertThat(count(inside)).isEqualTo(10_000 - 400);
        assertThat(count(ZoneMask.of(List.of(), 10, 10))).isZero();
    }
}
