package umbercard.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import umbercard.words.Words;

/** Sizes against {@code proportion_rules.csv}: Reynolds 1783, Smith 1797, Euclid VI.30. */
class FractionTest {
    private static final List<Fraction> ALL = List.of(Fraction.values());

    /** Names of the file's numbers, and the fraction each of them is. */
    private static final Map<String, List<Fraction>> PUBLISHED = Map.of(
            "reynolds_light.light_max", List.of(Fraction.QUARTER),
            "reynolds_light.mid", List.of(Fraction.HALF),
            "smith_thirds_sky.sky", List.of(Fraction.TWO_THIRDS, Fraction.THIRD),
            "euclid_vi30.greater", List.of(Fraction.GREATER_PART),
            "euclid_vi30.less", List.of(Fraction.LESSER_PART),
            "golden_lines.lines", List.of(Fraction.LESSER_PART, Fraction.GREATER_PART));

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "proportion_rules.csv", numLinesToSkip = 1)
    void sizesAreThePublishedOnes(
            String id, String author, String work, String year, String place, String rule, String numbers) {
        Map<String, double[]> read = numbers(numbers);
        read.forEach((name, values) -> {
            List<Fraction> fractions = PUBLISHED.getOrDefault(id + "." + name, List.of());
            for (int i = 0; i < fractions.size(); i++) {
                assertThat(fractions.get(i).share()).as(id + "." + name).isEqualTo(values[i], within(5e-5));
            }
        });
        if (!id.equals("smith_thirds_general")) {
            assertThat(read.keySet()).anyMatch(name -> PUBLISHED.containsKey(id + "." + name));
        }
    }

    private static Map<String, double[]> numbers(String text) {
        Map<String, double[]> numbers = new HashMap<>();
        for (String pair : text.split(";")) {
            String[] sides = pair.split("=");
            numbers.put(
                    sides[0],
                    Arrays.stream(sides[1].split("[|,]"))
                            .mapToDouble(FractionTest::number)
                            .toArray());
        }
        return numbers;
    }

    private static double number(String text) {
        String[] ratio = text.split(":");
        return ratio.length == 2
                ? Double.parseDouble(ratio[0]) / Double.parseDouble(ratio[1])
                : Double.parseDouble(text);
    }

    /** Smith's two thirds are nearest for a larger side of 0.5833 to 0.7333 among 1/2, 2/3 and 4/5; here 1/2 and 2/3 meet at 0.5833. */
    @ParameterizedTest
    @CsvSource({"0.583, HALF", "0.584, TWO_THIRDS", "0.733, TWO_THIRDS"})
    void twoThirdsTakeOverWhereSmithsRuleSays(double share, Fraction expected) {
        assertThat(Fraction.nearest(share, List.of(Fraction.HALF, Fraction.TWO_THIRDS)))
                .isEqualTo(expected);
    }

    @ParameterizedTest
    @EnumSource
    void eachIsNearestToItself(Fraction fraction) {
        assertThat(Fraction.nearest(fraction.share(), ALL)).isEqualTo(fraction);
        assertThat(Words.say(fraction.words())).isNotBlank();
    }
}
