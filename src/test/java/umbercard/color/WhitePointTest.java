package umbercard.color;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.List;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;

class WhitePointTest {
    private static final List<WhitePoint> NAMED = List.of(WhitePoint.D65, WhitePoint.D50, WhitePoint.C, WhitePoint.A);

    private static void assertClose(Xyz actual, double x, double y, double z, Offset<Double> within) {
        assertThat(actual.x()).isCloseTo(x, within);
        assertThat(actual.y()).isCloseTo(y, within);
        assertThat(actual.z()).isCloseTo(z, within);
    }

    /** CIE 15; the file names its sources. */
    @Test
    void theNamedWhitesHaveTheirPublishedChromaticities() throws IOException {
        JsonNode lab = Constants.read("cie_lab_1976");
        assertIs(WhitePoint.D50, lab.get("white_D50_xy"));
        assertIs(WhitePoint.C, lab.get("white_C_xy"));
        assertIs(WhitePoint.D65, Constants.read("srgb_iec61966_2_1").get("white_D65_xy"));
        JsonNode xyz = lab.get("white_D50_XYZ_from_xy");
        assertClose(
                WhitePoint.D50.xyz(),
                Constants.number(xyz, 0),
                Constants.number(xyz, 1),
                Constants.number(xyz, 2),
                within(5e-10));
    }

    private static void assertIs(WhitePoint white, JsonNode xy) {
        assertThat(white).isEqualTo(new WhitePoint(Constants.number(xy, 0), Constants.number(xy, 1)));
    }

    /** CIE 15: tungsten light is yellower than daylight; the usual XYZ of A, 1.09850, 1, 0.35585, is from memory. */
    @Test
    void lamplightIsIlluminantA() {
        assertClose(WhitePoint.A.xyz(), 1.09850, 1, 0.35585, within(1e-4));
    }

    /** The matrix from D65 to D50 that ICC.1 and CSS Color 4 use; the file names its sources. */
    @Test
    void adaptationIsBradfords() throws IOException {
        JsonNode matrix = Constants.read("bradford").get("D65_to_D50");
        Xyz[] units = {new Xyz(1, 0, 0), new Xyz(0, 1, 0), new Xyz(0, 0, 1)};
        for (int i = 0; i < 3; i++) {
            assertClose(
                    WhitePoint.D65.adapt(units[i], WhitePoint.D50),
                    Constants.number(matrix, 0, i),
                    Constants.number(matrix, 1, i),
                    Constants.number(matrix, 2, i),
                    within(1e-9));
        }
    }

    /** The 1943 renotation from its own x, y under C, with Y by ASTM D1535; the file says how it was checked. */
    @ParameterizedTest
    @CsvFileSource(resources = "munsell_chips.csv", useHeadersInDisplayName = true)
    void munsellChipsComeOverFromIlluminantC(ArgumentsAccessor row) {
        boolean neutral = row.getString(1).equals("N"); // of which the table rounds x and y
        double x = neutral ? WhitePoint.C.x() : row.getDouble(4);
        double y = neutral ? WhitePoint.C.y() : row.getDouble(5);
        Xyz measured = new Xyy(x, y, row.getDouble(7) / 100).xyz();
        Lab color = MeasuredLab.of(measured, WhitePoint.C).lab();
        assertThat(color.l()).isCloseTo(row.getDouble(11), within(0.01));
        assertThat(color.a()).isCloseTo(row.getDouble(12), within(0.01));
        assertThat(color.b()).isCloseTo(row.getDouble(13), within(0.01));
        MeasuredLab underC = MeasuredLab.of(color, WhitePoint.C);
        assertThat(underC.l()).isCloseTo(row.getDouble(14), within(0.01));
        assertThat(underC.a()).isCloseTo(row.getDouble(15), within(0.01));
        assertThat(underC.b()).isCloseTo(row.getDouble(16), within(0.01));
    }

    /** L*a*b* under D50, computed at 40 digits; the file says how it was checked. */
    @ParameterizedTest
    @CsvFileSource(resources = "srgb_lab.csv", useHeadersInDisplayName = true)
    void screenColorsHaveTheirLabUnderD50(ArgumentsAccessor row) {
        Lab color = Lab.ofSrgb(Integer.parseInt(row.getString(4).substring(1), 16));
        MeasuredLab d50 = MeasuredLab.of(color, WhitePoint.D50);
        assertThat(d50.l()).isCloseTo(row.getDouble(12), within(1e-3));
        assertThat(d50.a()).isCloseTo(row.getDouble(13), within(1e-3));
        assertThat(d50.b()).isCloseTo(row.getDouble(14), within(1e-3));
        assertThat(Ciede2000.difference(d50.lab(), color)).isLessThan(1e-9);
    }

    @Property(tries = 300, seed = "1985", edgeCases = EdgeCasesMode.NONE)
    void everyColorComesBackFromEveryWhite(
            @ForAll @Scale(7) @DoubleRange(max = 100) double l,
            @ForAll @Scale(7) @DoubleRange(min = -80, max = 80) double a,
            @ForAll @Scale(7) @DoubleRange(min = -80, max = 80) double b) {
        Lab color = new Lab(l, a, b);
        for (WhitePoint white : NAMED) {
            Lab back = MeasuredLab.of(color, white).lab();
            assertThat(back.l()).isCloseTo(l, within(1e-9));
            assertThat(back.a()).isCloseTo(a, within(1e-9));
            assertThat(back.b()).isCloseTo(b, within(1e-9));
        }
    }

    @Test
    void eachWhiteGoesToTheOther() {
        for (WhitePoint from : NAMED) {
            for (WhitePoint to : NAMED) {
                Xyz white = to.xyz();
                assertClose(from.adapt(from.xyz(), to), white.x(), white.y(), white.z(), within(1e-12));
            }
        }
    }

    @Property(tries = 200, seed = "31", edgeCases = EdgeCasesMode.NONE)
    void chromaticityAndLuminanceGoBothWays(
            @ForAll @Scale(7) @DoubleRange(min = 0.01, max = 1) double x,
            @ForAll @Scale(7) @DoubleRange(min = 0.01, max = 1) double y,
            @ForAll @Scale(7) @DoubleRange(min = 0.01, max = 1) double z) {
        assertClose(new Xyz(x, y, z).xyy().orElseThrow().xyz(), x, y, z, within(1e-12));
    }

    @Test
    void whatIsNoColorIsRefused() {
        assertThat(new Xyz(0, 0, 0).xyy()).isEmpty();
        assertThatThrownBy(() -> new Xyz(Double.NaN, 0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Xyy(0.3, 0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new WhitePoint(0.7, 0.4)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new WhitePoint(0, 0.4)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Lch(50, -1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new MeasuredLab(50, Double.NaN, 0, WhitePoint.D50))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
