package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;

class CrossingsTest {
    private static final Outline SQUARE = Outline.rectangle(0.2, 0.2, 0.6, 0.6);

    @Test
    void findsThoseThatCrossEachOther() {
        Outline apart = Outline.rectangle(0.7, 0.1, 0.9, 0.9);
        Outline inside = Outline.rectangle(0.3, 0.3, 0.5, 0.5);
        Outline across = Outline.rectangle(0.1, 0.35, 0.25, 0.45);
        assertThat(Crossings.among(List.of(SQUARE, apart, inside)).isEmpty()).isTrue();
        assertThat(Crossings.among(List.of(apart, SQUARE, inside, across)).stream()
                        .toArray())
                .containsExactly(1, 3);
    }

    @Test
    void findsOneThatCrossesItself() {
        Outline bowTie = Outline.polygon(List.of(new Point(0, 0), new Point(1, 1), new Point(1, 0), new Point(0, 0.9)));
        assertThat(Crossings.among(List.of(SQUARE.mapped(p -> p.plus(2, 2)), bowTie)).stream()
                        .toArray())
                .containsExactly(1);
    }

    @Test
    void sidesThatMeetInACornerDoNotCross() {
        assertThat(Crossings.among(List.of(SQUARE)).isEmpty()).isTrue();
    }
}
