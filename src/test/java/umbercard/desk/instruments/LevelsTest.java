package umbercard.desk.instruments;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import umbercard.model.Level;

class LevelsTest {
    @Test
    void coordinatesStandOnTheGridOfEdits() {
        assertThat(Levels.at(1 / 3.0, 2 / 3.0)).isEqualTo(new Level(0.3333333, 0.6666667));
    }

    @Test
    void whatRoundsToNothingHasNoSign() {
        assertThat(Levels.at(0.5, -1e-9)).isEqualTo(Level.at(0.5));
    }
}
