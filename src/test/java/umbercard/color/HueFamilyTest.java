package umbercard.color;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import umbercard.words.Message;
import umbercard.words.Words;

class HueFamilyTest {
    /** The boundaries that the class states, from the chips it names (renotation of 1943). */
    @ParameterizedTest
    @CsvSource({
        "RED_VIOLET, RED, 5RP 6/6, 5R 5/8, 0.5",
        "RED, ORANGE, 10R 5/10, 10R 5/10, 0",
        "ORANGE, YELLOW, 7.5YR 5/4, 7.5YR 5/4, 0",
        "YELLOW, YELLOW_GREEN, 5Y 6/2, 5GY 5/6, 0.5",
        "YELLOW_GREEN, GREEN, 5GY 5/6, 5G 5/8, 0.5",
        "GREEN, BLUE_GREEN, 5G 5/8, 5BG 6/4, 0.5",
        "BLUE_GREEN, BLUE, 5BG 6/4, 5B 5/6, 0.5",
        "BLUE, VIOLET, 5PB 6/6, 5P 5/8, 0.75",
        "VIOLET, RED_VIOLET, 5P 5/8, 5RP 6/6, 0.5"
    })
    void huesPartWhereTheChipsSay(HueFamily before, HueFamily after, String from, String to, double part) {
        double start = Chips.hue(from);
        double turn = (Chips.hue(to) - start + 360) % 360;
        double border = start + part * turn;
        assertThat(HueFamily.ofHue((border + 359.9) % 360)).isEqualTo(before);
        assertThat(HueFamily.ofHue((border + 0.1) % 360)).isEqualTo(after);
    }

    /** The principal hues of the renotation, which Munsell names so himself but for orange, violet and their neighbors. */
    @ParameterizedTest
    @CsvSource({
        "5R 4/14, RED",
        "5R 8/4, RED",
        "5YR 6/12, ORANGE",
        "5YR 7/4, ORANGE",
        "10YR 7/8, YELLOW",
        "5Y 8/12, YELLOW",
        "5Y 9/6, YELLOW",
        "5GY 7/8, YELLOW_GREEN",
        "5GY 3/4, YELLOW_GREEN",
        "5G 5/8, GREEN",
        "5G 7/4, GREEN",
        "5BG 4/6, BLUE_GREEN",
        "5BG 6/4, BLUE_GREEN",
        "5B 3/4, BLUE",
        "5B 7/4, BLUE",
        "5PB 4/10, BLUE",
        "5PB 2/6, BLUE",
        "5P 5/8, VIOLET",
        "5P 3/6, VIOLET",
        "5RP 4/10, RED_VIOLET",
        "5RP 8/4, RED_VIOLET",
        "10YR 5/6, BROWN",
        "7.5YR 5/4, BROWN",
        "5YR 4/6, BROWN",
        "2.5YR 3/4, BROWN",
        "10YR 3/2, BROWN",
        "5B 8/2, COOL_GRAY",
        "5PB 8/2, COOL_GRAY",
        "N 1/, BLACK",
        "N 2/, BLACK",
        "N 3/, DARK_GRAY",
        "N 4/, DARK_GRAY",
        "N 5/, GRAY",
        "N 6/, GRAY",
        "N 7/, LIGHT_GRAY",
        "N 8/, LIGHT_GRAY",
        "N 9/, WHITE"
    })
    void chipsAreCalledWhatTheyAre(String chip, HueFamily family) {
        assertThat(HueFamily.of(Chips.read().get(chip))).isEqualTo(family);
    }

    @Test
    void brownEndsWhereTheClassSays() {
        Lab dark = Lab.gray(Lab.lightness(MunsellValue.luminance(5.49)));
        Lab lighter = Lab.gray(Lab.lightness(MunsellValue.luminance(5.51)));
        assertThat(HueFamily.of(new Lch(dark.l(), 30, 60).lab())).isEqualTo(HueFamily.BROWN);
        assertThat(HueFamily.of(new Lch(lighter.l(), 30, 60).lab())).isEqualTo(HueFamily.ORANGE);
        assertThat(HueFamily.of(new Lch(40, 30, Chips.hue("5Y 4/4") - 0.1).lab()))
                .isEqualTo(HueFamily.BROWN);
        assertThat(HueFamily.of(new Lch(40, 30, Chips.hue("5Y 4/4") + 0.1).lab()))
                .isEqualTo(HueFamily.YELLOW);
        assertThat(HueFamily.of(new Lch(40, 30, 44).lab())).isEqualTo(HueFamily.RED);
    }

    @Test
    void aGrayHasACastOnlyIfItIsSeen() {
        assertThat(HueFamily.of(new Lch(50, 9.9, 64).lab())).isEqualTo(HueFamily.WARM_GRAY);
        assertThat(HueFamily.of(new Lch(50, 9.9, 244).lab())).isEqualTo(HueFamily.COOL_GRAY);
        assertThat(HueFamily.of(new Lch(50, 9.9, 154).lab())).isEqualTo(HueFamily.GRAY);
        assertThat(HueFamily.of(new Lch(50, 4.9, 64).lab())).isEqualTo(HueFamily.GRAY);
        assertThat(HueFamily.of(new Lch(50, 10.1, 154).lab())).isEqualTo(HueFamily.GREEN);
        assertThat(HueFamily.of(new Lch(95, 9, 80).lab())).isEqualTo(HueFamily.WHITE);
        assertThat(HueFamily.of(new Lch(10, 9, 250).lab())).isEqualTo(HueFamily.BLACK);
    }

    @Property(tries = 400, seed = "36")
    void chromaAloneDecidesWhatIsNeutral(
            @ForAll @Scale(7) @DoubleRange(max = 100) double l,
            @ForAll @Scale(7) @DoubleRange(max = 60) double c,
            @ForAll @Scale(7) @DoubleRange(max = 359.9) double h) {
        Lab color = new Lch(l, c, h).lab();
        HueFamily family = HueFamily.of(color);
        assertThat(family.isNeutral()).isEqualTo(color.chroma() < HueFamily.NEUTRAL_BELOW);
        if (!family.isNeutral() && family != HueFamily.BROWN) {
            assertThat(family).isEqualTo(HueFamily.ofHue(color.hue()));
        }
        assertThat(Words.say(Message.of("trade.hue-family." + family.key()))).isNotBlank();
    }
}
