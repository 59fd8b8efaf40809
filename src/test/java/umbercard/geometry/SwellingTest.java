package umbercard.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SwellingTest {
    private static final Region SQUARE = Region.rectangle(0, 0, 1, 1);

    /** Steiner 1840: area + perimeter × distance + π distance², of which round corners drawn with chords miss a hair. */
    @Test
    void aSquareSwellsAsSteinerSays() {
        double by = 0.1;
        double area = Swelling.of(SQUARE, by).orElseThrow().area();
        assertThat(area).isEqualTo(1 + 4 * by + Math.PI * by * by, within(0.01 * Math.PI * by * by));
        assertThat(Swelling.of(SQUARE, 0).orElseThrow().area()).isEqualTo(1, within(1e-9));
    }

    @Test
    void closingFillsGapsNarrowerThanTheWidthAndNoOthers() {
        Region apart = SQUARE.union(Region.rectangle(1.1, 0, 2, 1));
        Region closed = Swelling.closed(apart, 0.11).orElseThrow();
        assertThat(closed.pieces()).hasSize(1);
        assertThat(apart.minus(closed).area()).isZero();
        assertThat(closed.intersect(Region.rectangle(1, 0.1, 1.1, 0.9)).area()).isEqualTo(0.08, within(1e-9));
        assertThat(Swelling.closed(apart, 0.09).orElseThrow().minus(apart).area())
                .isLessThan(1e-9);
    }

    @Test
    void onePieceWithHolesIsOneOutlineThatFillsIt() {
        Region holed = SQUARE.minus(Region.rectangle(0.2, 0.2, 0.4, 0.4)).minus(Region.rectangle(0.6, 0.5, 0.8, 0.9));
        Region both = holed.union(Region.rectangle(2, 0, 3, 1));
        assertThat(both.outlinesOfPieces()).hasSize(2);
        Region filled = Region.of(both.outlinesOfPieces());
        assertThat(filled.minus(both).area() + both.minus(filled).area()).isLessThan(1e-9);
        Region evenOdd = Region.evenOdd(both.outlinesOfPieces());
        assertThat(evenOdd.area()).isEqualTo(both.area(), within(1e-9));
    }
}
