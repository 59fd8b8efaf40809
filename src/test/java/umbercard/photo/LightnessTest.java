package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import umbercard.color.Lab;
import umbercard.picture.Picture;
import umbercard.picture.ValueField;

class LightnessTest {
    /** CIE 15 under D65, computed at 40 digits; the file says how it was checked. */
    @ParameterizedTest
    @CsvFileSource(resources = "/umbercard/color/srgb_lab.csv", useHeadersInDisplayName = true)
    void agreesWithTheTable(ArgumentsAccessor row) {
        int rgb = Integer.parseInt(row.getString(4).substring(1), 16);
        ValueField field = Values.of(new Picture(1, 1, new int[] {rgb}));
        assertThat((double) Lightness.of(field)[0]).isCloseTo(row.getDouble(9), within(0.01));
    }

    @Test
    void staysWithinAHundredthOfTheFormula() {
        for (int i = 0; i <= 1_000_000; i++) {
            float luminance = i / 1e6f;
            assertThat((double) Lightness.of(luminance)).isCloseTo(Lab.lightness(luminance), within(0.01));
        }
    }

    @Test
    void clipsWhatLiesBeyondBlackAndWhite() {
        assertThat(Lightness.of(-0.1f)).isZero();
        assertThat(Lightness.of(1.2f)).isEqualTo(100);
    }
}
