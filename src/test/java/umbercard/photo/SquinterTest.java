package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import umbercard.color.MunsellValue;
import umbercard.picture.Picture;
import umbercard.picture.ValueField;

class SquinterTest {

    /** The reference is the Gaussian's definition, sampled out to six sigma. */
    @ParameterizedTest
    @ValueSource(doubles = {0.4, 1, 2.5, 3, 4, 7.3, 15, 40})
    void comesNearATrueGaussian(double sigma) {
        ValueField field = Fields.of(90, 60, (x, y) -> Math.floor(5 * x + 3 * y) % 2 == 0 ? 0.02 : 0.9);
        ValueField blurred = Squinter.squint(field, sigma);
        double sum = 0;
        for (int y = 0; y < 60; y++) {
            for (int x = 0; x < 90; x++) {
                sum += Math.abs(lightness(blurred.at(x, y)) - lightness(gaussian(field, sigma, x, y)));
            }
        }
        assertThat(sum / 5400).isLessThan(sigma < 3 ? 0.02 : 0.5);
    }

    @Test
    void spreadsAPointAsFarAsSigmaSays() {
        ValueField point = Fields.of(121, 121, (x, y) -> Math.hypot(x - 0.5, y - 0.5) < 0.5 / 121 ? 1 : 0);
        for (double sigma : new double[] {1.5, 3.2, 6, 11}) {
            ValueField blurred = Squinter.squint(point, sigma);
            double light = 0;
            double variance = 0;
            for (int y = 0; y < 121; y++) {
                for (int x = 0; x < 121; x++) {
                    light += blurred.at(x, y);
                    variance += (x - 60.0) * (x - 60) * blurred.at(x, y);
                }
            }
            assertThat(light).isCloseTo(1, within(1e-3));
            assertThat(variance / light).isCloseTo(sigma * sigma, within(0.01 * sigma * sigma));
        }
    }

    @Test
    void losesNoLightAtTheBorders() {
        ValueField noise = Fields.noise(40, 7, 9);
        for (double sigma : new double[] {0.8, 5, 60}) {
            assertThat(sum(Squinter.squint(noise, sigma))).isCloseTo(sum(noise), within(0.02));
        }
    }

    @Test
    void leavesAFlatFieldFlat() {
        ValueField flat = Fields.of(30, 20, (x, y) -> 0.37);
        for (float sample : Squinter.squint(flat, 8).luminance()) {
            assertThat(sample).isCloseTo(0.37f, within(1e-6f));
        }
    }

    @Test
    void sigmaZeroGivesTheSame() {
        ValueField field = Fields.noise(4, 4, 1);
        Picture picture = Photographs.noise(4, 4, 1);
        assertThat(Squinter.squint(field, 0)).isSameAs(field);
        assertThat(Squinter.squint(picture, 0)).isSameAs(picture);
        assertThatThrownBy(() -> Squinter.squint(field, -1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void blursColorsInLinearLight() {
        Picture edge = Photographs.picture(200, 3, (x, y) -> x < 100 ? 0xff0000 : 0x00ff00);
        int middle = Squinter.squint(edge, 12).rgb(100, 1);
        // IEC 61966-2-1: half the light is encoded as 188.
        assertThat(middle >> 16).isCloseTo(188, within(4));
        assertThat(middle >> 8 & 0xff).isCloseTo(188, within(4));
        assertThat(middle & 0xff).isZero();
    }

    private static double gaussian(ValueField field, double sigma, int x, int y) {
        int reach = (int) Math.ceil(6 * sigma);
        double[] across = new double[field.width()];
        double[] down = new double[field.height()];
        spread(across, x, sigma, reach);
        spread(down, y, sigma, reach);
        double sum = 0;
        for (int j = 0; j < down.length; j++) {
            for (int i = 0; i < across.length; i++) {
                sum += down[j] * across[i] * field.at(i, j);
            }
        }
        return sum;
    }

    /** How much each sample of a line counts at a place, beyond the ends the line mirrored. */
    private static void spread(double[] weights, int at, double sigma, int reach) {
        double all = 0;
        for (int i = at - reach; i <= at + reach; i++) {
            double weight = Math.exp(-(i - at) * (double) (i - at) / (2 * sigma * sigma));
            int place = Math.floorMod(i, 2 * weights.length);
            weights[place < weights.length ? place : 2 * weights.length - 1 - place] += weight;
            all += weight;
        }
        for (int i = 0; i < weights.length; i++) {
            weights[i] /= all;
        }
    }

    /** L* stays within 1.06 of ten times the Munsell value (ASTM D1535, CIE 15): near enough for an error bound. */
    private static double lightness(double luminance) {
        return 10 * MunsellValue.ofLuminance(luminance);
    }

    private static double sum(ValueField field) {
        double sum = 0;
        for (float sample : field.luminance()) {
            sum += sample;
        }
        return sum;
    }
}
