package umbercard.cards.type;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.io.InputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import umbercard.door.Drawing.Weight;
import umbercard.door.Type;

class RobotoTest {
    private static final Type TYPE = Roboto.type();
    private static final double POINT = 25.4 / 72;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Kiln Hill, first snow|Regular|REGULAR",
                "Kiln Hill, first snow|Medium|MEDIUM",
                "0123456789|Medium|MEDIUM",
                "Flügel à la neige: ½ × 3 · …|Regular|REGULAR"
            })
    void measuresAsTheToolkitDoes(String words, String file, Weight weight) throws Exception {
        Font font;
        try (InputStream in =
                RobotoTest.class.getResourceAsStream("/com/formdev/flatlaf/fonts/roboto/Roboto-" + file + ".ttf")) {
            font = Font.createFont(Font.TRUETYPE_FONT, in).deriveFont(1000f);
        }
        double ems = font.getStringBounds(words, new FontRenderContext(new AffineTransform(), true, true))
                        .getWidth()
                / 1000;
        assertThat(TYPE.width(words, 12, weight)).isEqualTo(ems * 12 * POINT, within(0.02));
    }

    @Test
    void mediumIsWiderThanRegular() {
        assertThat(TYPE.width("Alder bark", 9, Weight.MEDIUM))
                .isGreaterThan(TYPE.width("Alder bark", 9, Weight.REGULAR));
    }

    @Test
    void widthGrowsWithTheSize() {
        assertThat(TYPE.width("snow", 18, Weight.REGULAR))
                .isEqualTo(2 * TYPE.width("snow", 9, Weight.REGULAR), within(1e-9));
    }

    @Test
    void capitalsStandAboutSevenTenthsOfTheSizeHigh() {
        // Roboto's OS/2 table gives sCapHeight 1456 of 2048 units.
        assertThat(TYPE.capHeight(72)).isEqualTo(25.4 * 1456 / 2048, within(1e-6));
    }

    @Test
    void linesStandApartByMoreThanTheSize() {
        assertThat(TYPE.height(12)).isGreaterThan(12 * POINT);
    }

    @Test
    void saysWhichCharactersItHas() {
        assertThat(TYPE.covers("Kiln Hill × ½ ßéŽ Ωд")).isTrue();
        assertThat(TYPE.covers("雪")).isFalse();
        assertThat(TYPE.covers("\uD83C\uDFA8")).isFalse();
    }

    @Test
    void charactersThatItLacksCountGenerously() {
        assertThat(TYPE.width("雪", 72, Weight.REGULAR)).isGreaterThan(25.4);
        assertThat(TYPE.width("\uD83C\uDFA8", 72, Weight.REGULAR)).isGreaterThan(25.4);
    }
}
