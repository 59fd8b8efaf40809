package umbercard.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import umbercard.geometry.Line;
import umbercard.geometry.Point;

class LevelTest {
    @Test
    void isAtItsHeightInTheMiddle() {
        assertThat(new Level(0.4, 30).yAt(0.75, 1.5)).isEqualTo(0.4);
        assertThat(Level.at(0.4).yAt(0, 1.5)).isEqualTo(0.4);
        assertThat(Level.at(0.4).yAt(1.5, 1.5)).isEqualTo(0.4);
    }

    /** Counter-clockwise with y down: the right end goes up, which is a smaller y. */
    @Test
    void tiltedCounterClockwiseItRisesToTheRight() {
        Level rising = new Level(0.5, 45);
        assertThat(rising.yAt(1, 1)).isCloseTo(0, within(1e-12));
        assertThat(rising.yAt(0, 1)).isCloseTo(1, within(1e-12));
        assertThat(new Level(0.5, -10).yAt(1, 1)).isGreaterThan(0.5);
    }

    @Test
    void isNeverUpright() {
        assertThatThrownBy(() -> new Level(0.5, 90)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Level(0.5, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Level(Double.NaN, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({".4, 0", ".4, 10", ".7, -35", "-.2, 88"})
    void comesBackFromItsLine(double y, double tilt) {
        Level back = Level.along(new Level(y, tilt).across(1.25), 1.25);

        assertThat(back.y()).isCloseTo(y, within(1e-12));
        assertThat(back.tilt()).isCloseTo(tilt, within(1e-9));
    }

    @Test
    void runsAcrossTheFrame() {
        Line line = new Level(.5, 45).across(1);

        assertThat(line.from().distance(new Point(0, 1))).isLessThan(1e-12);
        assertThat(line.to().distance(new Point(1, 0))).isLessThan(1e-12);
    }

    @Test
    void isHeldAlongTooSteepALine() {
        assertThat(Level.along(new Line(new Point(0, 0), new Point(1e-9, 1)), 1.25)
                        .tilt())
                .isEqualTo(-89);
    }
}
