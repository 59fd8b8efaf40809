package umbercard.desk.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import umbercard.door.Limit;
import umbercard.door.Reading;
import umbercard.readings.Evaluation;
import umbercard.words.Words;

class LimitFieldsTest {
    private static final List<String> UNITS = Stream.of(
                    "share",
                    "count",
                    "times",
                    "degrees",
                    "half-widths",
                    "of-the-diagonal",
                    "tau",
                    "steps",
                    "chroma",
                    "ciede2000")
            .map(unit -> Words.say("ledger.unit." + unit))
            .toList();

    @ParameterizedTest
    @CsvSource({
        "0.05, share, 0, 0.5, 0.01",
        "0.9, share, 0.5, 1, 0.01",
        "0.012, of the diagonal, 0.004, 0.1, 0.001",
        "0.005, share, 0.0001, 0.5, 0.001",
        "1.5, times, 0, 10, 0.1",
        "0.5, degrees, 0, 89, 0.1",
        "7, count, 2, 100, 1",
        "0, share, 0, 0.5, 0.001"
    })
    void oneStepIsFineEnoughForTheLimit(double value, String unit, double least, double most, double step) {
        assertThat(LimitFields.step(new Limit(value, unit, least, most))).isEqualTo(step, within(1e-12));
    }

    @Test
    void everyLimitAndUnitHasWords() {
        for (Reading reading : Evaluation.find().on()) {
            reading.rule().limits().forEach((name, limit) -> {
                assertThat(Words.say("ledger.limit." + reading.id() + "." + name))
                        .isNotBlank();
                assertThat(LimitFields.unit(limit)).isIn(UNITS);
            });
        }
    }
}
