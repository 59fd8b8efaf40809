package umbercard.color;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;

class MunsellValueTest {
    /** ASTM D1535, equation 2, absolute convention; the file says how it was checked. */
    @ParameterizedTest
    @CsvFileSource(resources = "munsell_value_luminance.csv", useHeadersInDisplayName = true)
    void agreesWithTheTableBothWays(ArgumentsAccessor row) {
        double value = row.getDouble(0);
        double luminance = row.getDouble(1) / 100;
        assertThat(100 * MunsellValue.luminance(value)).isCloseTo(row.getDouble(1), within(1e-6));
        assertThat(MunsellValue.ofLuminance(luminance)).isCloseTo(value, within(1e-5));
        Lab gray = Lab.ofXyz(new Xyy(WhitePoint.D65.x(), WhitePoint.D65.y(), luminance).xyz());
        assertThat(gray.l()).isCloseTo(row.getDouble(5), within(1e-4));
        assertThat(gray.value()).isCloseTo(value, within(1e-5));
        assertThat(gray.srgb() & 0xff).isEqualTo(row.getInteger(7));
    }

    /** ASTM D1535, inverted at high precision. */
    @Test
    void agreesWithTheInverseChecks() throws IOException {
        var checks = Constants.read("munsell_quintic").get("inverse_checks_V_from_Y_astm");
        assertThat(checks.properties()).hasSizeGreaterThan(10).allSatisfy(check -> {
            double luminance = Double.parseDouble(check.getKey()) / 100;
            assertThat(MunsellValue.ofLuminance(luminance))
                    .isCloseTo(check.getValue().asDouble(), within(1e-5));
        });
    }

    /** The bound that the constants file states for the distance of L* from ten times the value. */
    @Test
    void staysNearATenthOfLightness() {
        double furthest = 0;
        for (int i = 0; i <= 10_000; i++) {
            double lightness = i / 100.0;
            furthest = Math.max(furthest, Math.abs(lightness - 10 * new Lab(lightness, 0, 0).value()));
        }
        assertThat(furthest).isBetween(1.04, 1.06);
    }

    @Property(tries = 500, seed = "1535")
    void luminanceUndoesValue(@ForAll @Scale(7) @DoubleRange(max = 10) double value) {
        assertThat(MunsellValue.ofLuminance(MunsellValue.luminance(value))).isCloseTo(value, within(1e-9));
    }

    @Property(tries = 500, seed = "1535")
    void lighterIsHigher(
            @ForAll @Scale(7) @DoubleRange(max = 1) double luminance,
            @ForAll @Scale(7) @DoubleRange(min = 1e-6, max = 0.1) double more) {
        if (luminance + more <= 1) {
            assertThat(MunsellValue.ofLuminance(luminance + more)).isGreaterThan(MunsellValue.ofLuminance(luminance));
        }
    }

    @Test
    void whatPaperCannotHoldIsClipped() {
        assertThat(MunsellValue.ofLuminance(-0.1)).isZero();
        assertThat(MunsellValue.ofLuminance(1.5)).isEqualTo(10);
        assertThat(MunsellValue.luminance(-1)).isZero();
        assertThat(MunsellValue.luminance(12)).isCloseTo(1, within(1e-12));
    }
}
