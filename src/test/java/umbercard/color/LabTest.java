package umbercard.color;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
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

class LabTest {
    /** CIE 15 under D65, computed at 40 digits; the file says how it was checked. */
    @ParameterizedTest
    @CsvFileSource(resources = "srgb_lab.csv", useHeadersInDisplayName = true)
    void agreesWithTheTable(ArgumentsAccessor row) {
        String hex = row.getString(4);
        int rgb = Integer.parseInt(hex.substring(1), 16);
        Lab color = Lab.ofSrgb(rgb);
        assertThat(color.luminance()).isCloseTo(row.getDouble(8), within(1e-8));
        assertThat(color.l()).isCloseTo(row.getDouble(9), within(1e-3));
        assertThat(color.a()).isCloseTo(row.getDouble(10), within(1e-3));
        assertThat(color.b()).isCloseTo(row.getDouble(11), within(1e-3));
        assertThat(color.srgb()).isEqualTo(rgb);
        assertThat(color.hex()).isEqualTo(hex);
    }

    /** Munsell renotation of 1943 with conversions by two libraries; the file names its sources. */
    @ParameterizedTest
    @CsvFileSource(resources = "munsell_chips.csv", useHeadersInDisplayName = true)
    void agreesWithTheMunsellChips(ArgumentsAccessor row) {
        Lab color = Lab.ofXyz(new Xyz(row.getDouble(8), row.getDouble(9), row.getDouble(10)));
        assertThat(color.l()).isCloseTo(row.getDouble(11), within(0.01));
        assertThat(color.a()).isCloseTo(row.getDouble(12), within(0.01));
        assertThat(color.b()).isCloseTo(row.getDouble(13), within(0.01));
        if (row.getString(26).equals("in")) {
            int rgb = color.srgb();
            assertThat(rgb >> 16 & 0xff).isCloseTo(row.getInteger(20), within(1));
            assertThat(rgb >> 8 & 0xff).isCloseTo(row.getInteger(21), within(1));
            assertThat(rgb & 0xff).isCloseTo(row.getInteger(22), within(1));
        }
        if (row.getString(1).equals("N")) {
            assertThat(color.value()).isCloseTo(row.getDouble(2), within(1e-3));
            assertThat(color.chroma()).isLessThan(0.01);
        }
    }

    @Property(tries = 300, seed = "1976")
    void everyScreenColorComesBack(@ForAll @IntRange(max = 0xffffff) int rgb) {
        assertThat(Lab.ofSrgb(rgb).srgb()).isEqualTo(rgb);
    }

    @Property(tries = 300, seed = "1976")
    void everyColorComesBackFromItsTristimulusValues(
            @ForAll @Scale(7) @DoubleRange(max = 100) double l,
            @ForAll @Scale(7) @DoubleRange(min = -60, max = 60) double a,
            @ForAll @Scale(7) @DoubleRange(min = -60, max = 60) double b) {
        Lab color = new Lab(l, a, b);
        Lab back = Lab.ofXyz(color.xyz());
        assertThat(new double[] {back.l(), back.a(), back.b()}).containsExactly(new double[] {l, a, b}, within(1e-9));
    }

    @Property(tries = 300, seed = "1976", edgeCases = EdgeCasesMode.NONE)
    void everyColorComesBackFromItsPolarForm(
            @ForAll @Scale(7) @DoubleRange(max = 100) double l,
            @ForAll @Scale(7) @DoubleRange(min = -120, max = 120) double a,
            @ForAll @Scale(7) @DoubleRange(min = -120, max = 120) double b) {
        Lch polar = new Lab(l, a, b).lch();
        assertThat(polar.h()).isGreaterThanOrEqualTo(0).isLessThan(360);
        assertThat(polar.lab().l()).isEqualTo(l);
        assertThat(polar.lab().a()).isCloseTo(a, within(1e-9));
        assertThat(polar.lab().b()).isCloseTo(b, within(1e-9));
    }

    /** CIE 15: the two pieces meet at 216/24389, where L* is 8. */
    @Test
    void theTwoPiecesMeetAtEight() {
        assertThat(Lab.ofXyz(new Xyz(0, Cielab.EPSILON, 0)).l()).isCloseTo(8, within(1e-12));
        assertThat(new Lab(8, 0, 0).luminance()).isCloseTo(216.0 / 24389, within(1e-15));
        assertThat(new Lab(7.999999, 0, 0).luminance()).isCloseTo(new Lab(8.000001, 0, 0).luminance(), within(1e-8));
    }

    @Test
    void hueAndChromaArePolar() {
        assertThat(new Lab(50, 3, 4).chroma()).isEqualTo(5);
        assertThat(new Lab(50, 0, 0).hue()).isZero();
        assertThat(new Lab(50, 5, 0).hue()).isZero();
        assertThat(new Lab(50, 0, 5).hue()).isEqualTo(90);
        assertThat(new Lab(50, -5, 0).hue()).isEqualTo(180);
        assertThat(new Lab(50, 0, -5).hue()).isEqualTo(270);
        assertThat(new Lab(50, 5, -5).hue()).isEqualTo(315);
    }

    @Test
    void aColorIsFinite() {
        assertThatThrownBy(() -> new Lab(Double.NaN, 0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Lab(50, 0, Double.POSITIVE_INFINITY)).isInstanceOf(IllegalArgumentException.class);
    }
}
