package umbercard.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

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
}
