package umbercard.cards;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FileNamesTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Kiln Hill, first snow|kiln-hill-first-snow",
                "  ÉTANG à l'aube  |etang-a-l-aube",
                "../../etc/passwd|etc-passwd",
                "a\\b:c*d?e\"f<g>h|a-b-c-d-e-f-g-h",
                "雪の丘|study",
                "''|study",
                "...|study"
            })
    void areSafeEverywhere(String title, String name) {
        assertThat(FileNames.safe(title)).isEqualTo(name);
    }

    @Test
    void areNotEndless() {
        assertThat(FileNames.safe("snow ".repeat(100)))
                .hasSizeLessThanOrEqualTo(60)
                .doesNotEndWith("-");
    }
}
