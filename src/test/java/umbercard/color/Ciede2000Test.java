package umbercard.color;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class Ciede2000Test {
    /** Sharma, Wu and Dalal 2005, table 1; the file names its sources. */
    @ParameterizedTest
    @CsvFileSource(resources = "ciede2000_sharma.csv", useHeadersInDisplayName = true)
    void agreesWithThePublishedPairs(
            int pair,
            double l1,
            double a1,
            double b1,
            double l2,
            double a2,
            double b2,
            double published,
            double computed) {
        Lab one = new Lab(l1, a1, b1);
        Lab other = new Lab(l2, a2, b2);
        assertThat(Ciede2000.difference(one, other))
                .isCloseTo(published, within(1e-4))
                .isCloseTo(computed, within(1e-8))
                .isCloseTo(Ciede2000.difference(other, one), within(1e-12));
    }

    @Property(tries = 300, seed = "2005", edgeCases = EdgeCasesMode.NONE)
    void isSymmetricAndNeverNegative(
            @ForAll @Scale(7) @DoubleRange(max = 100) double l1,
            @ForAll @Scale(7) @DoubleRange(min = -120, max = 120) double a1,
            @ForAll @Scale(7) @DoubleRange(min = -120, max = 120) double b1,
            @ForAll @Scale(7) @DoubleRange(max = 100) double l2) {
        Lab one = new Lab(l1, a1, b1);
        Lab other = new Lab(l2, b1, -a1);
        assertThat(Ciede2000.difference(one, other))
                .isNotNegative()
                .isCloseTo(Ciede2000.difference(other, one), within(1e-9));
        assertThat(Ciede2000.difference(one, one)).isZero();
    }
}
