package umbercard.color;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class SrgbTest {
    /** IEC 61966-2-1. */
    @Test
    void theTransferFunctionIsTheStandards() throws IOException {
        JsonNode srgb = Constants.read("srgb_iec61966_2_1");
        double threshold = srgb.get("decode_threshold").asDouble();
        double slope = srgb.get("linear_slope").asDouble();
        double offset = srgb.get("offset").asDouble();
        double scale = srgb.get("scale").asDouble();
        double exponent = srgb.get("exponent").asDouble();
        for (double encoded = 0; encoded <= 1; encoded += 1.0 / 1024) {
            double linear =
                    encoded <= threshold ? encoded / slope : Math.exp(exponent * Math.log((encoded + offset) / scale));
            assertThat(Srgb.decode(encoded)).isCloseTo(linear, within(1e-14));
        }
        assertThat(Srgb.decode(threshold)).isEqualTo(threshold / slope);
        double toLinear = srgb.get("encode_threshold").asDouble();
        assertThat(Srgb.encode(toLinear)).isEqualTo(toLinear * slope);
        assertThat(Srgb.encode(1)).isCloseTo(1, within(1e-15));
    }

    @Test
    void theMatrixIsTheExactOne() throws IOException {
        JsonNode exact = Constants.read("srgb_iec61966_2_1").get("rgb_to_xyz_exact");
        double[][] columns = {
            numbers(Xyz.ofLinear(1, 0, 0)), numbers(Xyz.ofLinear(0, 1, 0)), numbers(Xyz.ofLinear(0, 0, 1))
        };
        for (int row = 0; row < 3; row++) {
            for (int column = 0; column < 3; column++) {
                assertThat(columns[column][row]).isCloseTo(Constants.number(exact, row, column), within(1e-11));
            }
        }
    }

    /** The matrix follows from the primaries and the white point alone, so they must come out of it. */
    @Test
    void theMatrixHasTheStandardsPrimariesAndWhite() throws IOException {
        JsonNode srgb = Constants.read("srgb_iec61966_2_1");
        assertChromaticity(Xyz.ofLinear(1, 0, 0), srgb.get("primaries_xy").get("R"));
        assertChromaticity(Xyz.ofLinear(0, 1, 0), srgb.get("primaries_xy").get("G"));
        assertChromaticity(Xyz.ofLinear(0, 0, 1), srgb.get("primaries_xy").get("B"));
        assertChromaticity(Xyz.ofLinear(1, 1, 1), srgb.get("white_D65_xy"));
        double[] d65 = numbers(WhitePoint.D65.xyz());
        assertThat(numbers(Xyz.ofLinear(1, 1, 1))).containsExactly(d65, within(1e-14));
        JsonNode white = Constants.read("cie_lab_1976").get("white_D65_XYZ_from_xy");
        for (int i = 0; i < 3; i++) {
            assertThat(d65[i]).isCloseTo(Constants.number(white, i), within(5e-10));
        }
    }

    private static double[] numbers(Xyz xyz) {
        return new double[] {xyz.x(), xyz.y(), xyz.z()};
    }

    private static void assertChromaticity(Xyz xyz, JsonNode xy) {
        Xyy told = xyz.xyy().orElseThrow();
        assertThat(told.x()).isCloseTo(Constants.number(xy, 0), within(1e-13));
        assertThat(told.y()).isCloseTo(Constants.number(xy, 1), within(1e-13));
    }

    @Property(tries = 200, seed = "65")
    void theMatricesUndoEachOther(
            @ForAll @Scale(7) @DoubleRange(max = 1) double red,
            @ForAll @Scale(7) @DoubleRange(max = 1) double green,
            @ForAll @Scale(7) @DoubleRange(max = 1) double blue) {
        assertThat(numbers(Srgb.toLinear(Xyz.ofLinear(red, green, blue))))
                .containsExactly(new double[] {red, green, blue}, within(1e-13));
    }

    /** The published pieces of the function meet only to about 1e-7. */
    @Property(tries = 300, seed = "2")
    void encodingUndoesDecoding(@ForAll @Scale(7) @DoubleRange(max = 1) double encoded) {
        assertThat(Srgb.encode(Srgb.decode(encoded))).isCloseTo(encoded, within(1e-7));
    }

    @Property(tries = 256, seed = "8")
    void everyByteComesBack(@ForAll @IntRange(max = 255) int component) {
        assertThat(Srgb.byteOf(Srgb.linear(component))).isEqualTo(component);
    }

    @Test
    void lightBeyondTheGamutIsClipped() {
        assertThat(Srgb.byteOf(-0.3)).isZero();
        assertThat(Srgb.byteOf(1.7)).isEqualTo(255);
    }

    /** IEC 61966-2-1 and CIE 15, computed at 40 digits; the file says how it was checked. */
    @ParameterizedTest
    @CsvFileSource(resources = "srgb_lab.csv", useHeadersInDisplayName = true)
    void linearLightAndLuminanceAgreeWithTheTable(
            String name, int red, int green, int blue, String hex, double lr, double lg, double lb, double y) {
        assertThat(Srgb.linear(red)).isCloseTo(lr, within(1e-8));
        assertThat(Srgb.linear(green)).isCloseTo(lg, within(1e-8));
        assertThat(Srgb.linear(blue)).isCloseTo(lb, within(1e-8));
        assertThat(Srgb.luminance(red << 16 | green << 8 | blue)).isCloseTo(y, within(1e-8));
    }
}
