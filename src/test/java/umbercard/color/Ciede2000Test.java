package umbercard.color;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
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

    /** Signs as Sharma, Wu and Dalal 2005 define the terms of equation 22, seen from the first color. */
    @Test
    void partsSayWhichWay() {
        Lab brown = new Lch(40, 30, 60).lab();
        Ciede2000.Parts lighter = Ciede2000.parts(brown, new Lch(50, 30, 60).lab());
        assertThat(lighter.lightness()).isPositive();
        assertThat(lighter.hue()).isCloseTo(0, within(1e-9));
        Ciede2000.Parts duller = Ciede2000.parts(brown, new Lch(40, 20, 60).lab());
        assertThat(duller.chroma()).isNegative();
        assertThat(duller.lightness()).isZero();
        assertThat(Ciede2000.parts(brown, new Lch(40, 30, 80).lab()).hue()).isPositive();
        assertThat(Ciede2000.parts(brown, new Lch(40, 30, 40).lab()).hue()).isNegative();
        assertThat(Ciede2000.parts(new Lch(50, 40, 350).lab(), new Lch(50, 40, 10).lab())
                        .hue())
                .as("the short way round")
                .isPositive();
        assertThat(Ciede2000.parts(brown, Lab.gray(40)).hue()).isZero();
    }

    @Property(tries = 300, seed = "22", edgeCases = EdgeCasesMode.NONE)
    void partsTurnTheirSignsWithTheColorsAndAddUp(
            @ForAll @Scale(7) @DoubleRange(max = 100) double l,
            @ForAll @Scale(7) @DoubleRange(min = -120, max = 120) double a,
            @ForAll @Scale(7) @DoubleRange(min = -120, max = 120) double b) {
        Lab one = new Lab(l, a, b);
        Lab other = new Lab(50, b / 2, a);
        Ciede2000.Parts there = Ciede2000.parts(one, other);
        Ciede2000.Parts back = Ciede2000.parts(other, one);
        assertThat(back.lightness()).isCloseTo(-there.lightness(), within(1e-9));
        assertThat(back.chroma()).isCloseTo(-there.chroma(), within(1e-9));
        assertThat(back.hue()).isCloseTo(-there.hue(), within(1e-9));
        assertThat(there.total()).isEqualTo(Ciede2000.difference(one, other));
        assertThat(Math.hypot(there.lightness(), Math.hypot(there.chroma(), there.hue())))
                .as("but for what turns among the blues")
                .isCloseTo(Math.sqrt(there.total() * there.total() - there.turning()), within(1e-6));
    }
}
