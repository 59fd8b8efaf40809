package umbercard.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import umbercard.color.Lab;
import umbercard.color.MeasuredLab;
import umbercard.color.WhitePoint;
import umbercard.model.Stick;

/** Tables' colors against published ones: the sources stand in the first lines of the files. */
class CsvColorsTest {
    /** The table's neutrals have this chromaticity, and print it rounded. */
    private static final String WHITE_C = "0.31006,0.31616";

    private static final String COLOR = "/umbercard/color/";

    private static Lab read(String... lines) throws IOException {
        byte[] table = String.join("\r\n", lines).getBytes(StandardCharsets.UTF_8);
        List<Stick> sticks = new CsvBoxReader()
                .read("box.csv", new ByteArrayInputStream(table))
                .box()
                .sticks();
        assertThat(sticks).hasSize(1);
        return sticks.get(0).color();
    }

    private static void assertNear(Lab color, double[] lab, double tolerance) {
        assertThat(color.l()).isCloseTo(lab[0], within(tolerance));
        assertThat(color.a()).isCloseTo(lab[1], within(tolerance));
        assertThat(color.b()).isCloseTo(lab[2], within(tolerance));
    }

    /** Y in percent, to the tolerance of the table, 0.01. */
    @ParameterizedTest
    @CsvFileSource(resources = COLOR + "munsell_chips.csv", useHeadersInDisplayName = true)
    void munsellChipsUnderC(ArgumentsAccessor row) throws IOException {
        boolean neutral = row.getString(1).equals("N");
        String chromaticity = neutral ? WHITE_C : row.getString(4) + "," + row.getString(5);
        String color = chromaticity + "," + row.getString(7);
        double[] lab = {row.getDouble(11), row.getDouble(12), row.getDouble(13)};
        assertNear(read("x,y,Y", color), lab, 0.01);
        assertNear(read("x,y,Y,white", color + ",c"), lab, 0.01);
        assertThat(read("x,y,Y,white", color + ",D65")).isNotEqualTo(read("x,y,Y", color));
    }

    /** To the tolerance of the table, 1e-3. */
    @ParameterizedTest
    @CsvFileSource(resources = COLOR + "srgb_lab.csv", useHeadersInDisplayName = true)
    void underD50AndUnderD65AndAsHexItIsTheSameColor(ArgumentsAccessor row) throws IOException {
        double[] lab = {row.getDouble(9), row.getDouble(10), row.getDouble(11)};
        String underD50 = String.join(",", row.getString(12), row.getString(13), row.getString(14));
        assertNear(read("L,a,b", underD50), lab, 1e-3);
        assertNear(read("L,a,b,white", underD50 + ",D50"), lab, 1e-3);
        assertNear(read("hex", row.getString(4)), lab, 1e-3);
        assertThat(read("L,a,b,white", lab[0] + "," + lab[1] + "," + lab[2] + ",D65"))
                .isEqualTo(new Lab(lab[0], lab[1], lab[2]));
    }

    @Test
    void aWhiteThatAdaptationCarriesALittlePast100IsHeldThere() throws IOException {
        Lab unheld = new MeasuredLab(100, -2, -3, WhitePoint.D50).lab();
        assertThat(unheld.l()).isBetween(100.01, 101.0);
        assertThat(read("L,a,b", "100,-2,-3")).isEqualTo(new Lab(100, unheld.a(), unheld.b()));
    }
}
