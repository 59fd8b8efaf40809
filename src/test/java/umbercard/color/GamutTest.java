package umbercard.color;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;

class GamutTest {
    /** Which chips of the 1943 renotation lie outside sRGB, by two libraries; the file names its sources. */
    @ParameterizedTest
    @CsvFileSource(resources = "munsell_chips.csv", useHeadersInDisplayName = true)
    void holdsTheChipsThatTheTableSaysItHolds(ArgumentsAccessor row) {
        Lab chip = Lab.ofXyz(new Xyz(row.getDouble(8), row.getDouble(9), row.getDouble(10)));
        assertThat(Gamut.holds(chip)).isEqualTo(row.getString(26).equals("in"));
    }

    @Property(tries = 300, seed = "61966")
    void everyScreenColorIsInsideAndStays(@ForAll @IntRange(max = 0xffffff) int rgb) {
        Lab color = Lab.ofSrgb(rgb);
        assertThat(Gamut.holds(color)).isTrue();
        assertThat(Gamut.nearest(color)).isEqualTo(color);
    }

    @Property(tries = 500, seed = "2008", edgeCases = EdgeCasesMode.NONE)
    void whatIsOutsideLosesChromaAlone(
            @ForAll @Scale(7) @DoubleRange(min = 1, max = 99) double l,
            @ForAll @Scale(7) @DoubleRange(min = -150, max = 150) double a,
            @ForAll @Scale(7) @DoubleRange(min = -150, max = 150) double b) {
        Lab color = new Lab(l, a, b);
        Lab near = Gamut.nearest(color);
        assertThat(Gamut.holds(near)).isTrue();
        assertThat(near.l()).isEqualTo(l);
        assertThat(near.chroma()).isLessThanOrEqualTo(color.chroma());
        assertThat(near.a() * b - near.b() * a).as("turn of the hue").isCloseTo(0, within(1e-9));
        assertThat(near.a() * a + near.b() * b).isNotNegative();
        if (!near.equals(color)) {
            assertThat(Gamut.holds(new Lab(l, 1.001 * near.a(), 1.001 * near.b())))
                    .as("as much chroma as there can be")
                    .isFalse();
        }
    }

    @Test
    void lighterThanWhiteIsWhiteAndDarkerThanBlackIsBlack() {
        assertThat(Gamut.nearest(new Lab(104, 30, 5))).isEqualTo(Lab.gray(100));
        assertThat(Gamut.nearest(new Lab(-3, 0, 20))).isEqualTo(Lab.gray(0));
        assertThat(new Lab(100, 20, 0).srgb()).isEqualTo(0xffffff);
    }

    /** A red far outside: clipped by the channel it would be ten values of L* too light. */
    @Test
    void aColorShownKeepsItsLightness() {
        Lab red = new Lab(40, 90, 60);
        assertThat(Lab.ofSrgb(red.srgb()).l()).isCloseTo(40, within(0.3));
        assertThat(Lab.ofSrgb(red.srgb()).hue()).isCloseTo(red.hue(), within(0.5));
    }
}
