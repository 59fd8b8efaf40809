package umbercard.desk.stack;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import umbercard.desk.KilnHill;
import umbercard.model.Level;
import umbercard.model.Thumbnail;

class StackWordsTest {
    private final Thumbnail first = KilnHill.study().thumbnails().get(0);

    @Test
    void darkIsInWholePercent() {
        assertThat(StackWords.dark(OptionalDouble.of(0.584))).isEqualTo("dark 58");
        assertThat(StackWords.dark(OptionalDouble.of(0.996))).isEqualTo("dark 100");
        assertThat(StackWords.dark(OptionalDouble.empty())).isEmpty();
    }

    @Test
    void theHorizonGoesBeforeTheLandEdge() {
        assertThat(StackWords.horizon(first)).isEqualTo("land edge .61");
        assertThat(StackWords.horizon(first.withHorizon(Optional.of(Level.at(0.5)))))
                .isEqualTo("horizon .50");
        assertThat(StackWords.horizon(first.withLandEdge(Optional.empty()))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"0.386, .61", "0, 1.00", "1, .00", "1.2, -.20"})
    void heightsAreWrittenWithoutTheNought(double down, String up) {
        assertThat(StackWords.horizon(first.withHorizon(Optional.of(Level.at(down)))))
                .isEqualTo("horizon " + up);
    }
}
