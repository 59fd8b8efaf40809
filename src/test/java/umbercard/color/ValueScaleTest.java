package umbercard.color;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ValueScaleTest {
    /** Black, middle and white: common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "ZERO_TO_TEN, 0, 5, 10, false, 11",
        "TEN_TO_ZERO, 10, 5, 0, true, 11",
        "ONE_TO_TEN, 1, 5.5, 10, false, 10",
        "TEN_TO_ONE, 10, 5.5, 1, true, 10",
        "ONE_TO_NINE, 1, 5, 9, false, 9",
        "NINE_TO_ONE, 9, 5, 1, true, 9",
        "NAMES, 1, 5, 9, false, 9"
    })
    void endsAndMiddleAreWhereTheScaleSays(
            ValueScale scale, double black, double middle, double white, boolean lightFirst, int marks) {
        assertThat(scale.number(0)).isEqualTo(black);
        assertThat(scale.number(5)).isEqualTo(middle);
        assertThat(scale.number(10)).isEqualTo(white);
        assertThat(scale.number(-1)).isEqualTo(black);
        assertThat(scale.number(11)).isEqualTo(white);
        assertThat(scale.isLightFirst()).isEqualTo(lightFirst);
        assertThat(scale.marks()).hasSize(marks).isSorted().startsWith(0.0).endsWith(10.0);
        assertThat(scale.marks())
                .allSatisfy(
                        mark -> assertThat(scale.number(mark)).isCloseTo(Math.rint(scale.number(mark)), within(1e-12)));
        assertThat(ValueScale.find(scale.key())).contains(scale);
        assertThat(ValueScale.find("")).isEmpty();
    }

    @Property(tries = 300, seed = "10")
    void everyValueComesBackFromItsNumber(
            @ForAll ValueScale scale, @ForAll @Scale(7) @DoubleRange(max = 10) double value) {
        assertThat(scale.value(scale.number(value))).isCloseTo(value, within(1e-9));
    }

    /** Ross 1907, section 128: the order of the names; equal steps give every 1.25 of Munsell's value. */
    @Test
    void rossNamesComeInHisOrderAtEqualSteps() {
        List<String> order = Stream.of(
                        "White, High Light, Light, Low Light, Middle, High Dark, Dark, Low Dark, Black".split(", "))
                .map(name -> name.toUpperCase(java.util.Locale.ROOT).replace(' ', '_'))
                .toList();
        assertThat(IntStream.rangeClosed(0, 8).mapToObj(i -> named(10 * (8 - i) / 8.0)))
                .containsExactlyElementsOf(order);
        assertThat(named(0.62)).isEqualTo("BLACK");
        assertThat(named(0.63)).isEqualTo("LOW_DARK");
        assertThat(named(9.37)).isEqualTo("HIGH_LIGHT");
        assertThat(named(9.38)).isEqualTo("WHITE");
    }

    private static String named(double value) {
        return ValueScale.NAMES.name(value).orElseThrow().name();
    }

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "NAMES")
    void numbersHaveNoNames(ValueScale scale) {
        assertThat(scale.name(5)).isEmpty();
    }
}
