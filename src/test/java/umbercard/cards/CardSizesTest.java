package umbercard.cards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import umbercard.geometry.Size;
import umbercard.words.Trouble;

class CardSizesTest {
    /** Every index card that can be made, and every sheet and panel up to drawing-board size, from the table. */
    static Stream<Reference.Row> sheets() {
        return Reference.rows("paper_sizes.csv").stream()
                .filter(row -> Double.parseDouble(row.get("short_mm")) >= 40)
                .filter(row -> Double.parseDouble(row.get("long_mm")) <= 600);
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void millimetersAreThoseOfTheTable(Reference.Row row) throws Trouble {
        String written = row.get("short") + "x" + row.get("long") + row.get("unit");
        assertThat(CardSizes.parse(written))
                .isEqualTo(new Size(Double.parseDouble(row.get("short_mm")), Double.parseDouble(row.get("long_mm"))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"3x5 in", "4x6 in", "5x8 in", "A7 card", "A6 card", "A5 card"})
    void namedCardsAreThoseOfTheTable(String name) throws Trouble {
        Reference.Row row = Reference.rows("paper_sizes.csv").stream()
                .filter(r ->
                        r.get("family").equals("index card") && r.get("name").equals(name))
                .findFirst()
                .orElseThrow();
        String id = name.replace(" card", "").replace(" ", "");
        assertThat(CardSizes.names()).contains(id.toLowerCase(java.util.Locale.ROOT));
        assertThat(CardSizes.parse(id))
                .isEqualTo(new Size(Double.parseDouble(row.get("short_mm")), Double.parseDouble(row.get("long_mm"))));
    }

    @ParameterizedTest
    @CsvSource({
        "4x6in, 101.6, 152.4",
        "6X4IN, 152.4, 101.6",
        "' 4 × 6 in ', 101.6, 152.4",
        "10.5x15cm, 105, 150",
        "90x140mm, 90, 140",
        "A6, 105, 148"
    })
    void readsWhatAPainterWrites(String written, double width, double height) throws Trouble {
        assertThat(CardSizes.parse(written)).isEqualTo(new Size(width, height));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "4x6", "4x6ft", "xin", "a99", "0x6in", "-4x6in", "4,5x6in", "4x6in!", "1e3x5mm"})
    void refusesWhatIsNoSizeAndSaysWhatIs(String written) {
        assertThatThrownBy(() -> CardSizes.parse(written))
                .isInstanceOf(Trouble.class)
                .hasMessageContaining(written + " is no size of a card")
                .hasMessageContaining("4x6in")
                .hasMessageContaining("10x15cm");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1x5in", "3x50in", "20x30mm", "100x100cm"})
    void refusesWhatIsNoCard(String written) {
        assertThatThrownBy(() -> CardSizes.parse(written))
                .isInstanceOf(Trouble.class)
                .hasMessageContaining("40 to 600 mm");
    }

    @Test
    void callsASizeByItsNameHoweverItLies() throws Trouble {
        assertThat(CardSizes.label(new Size(101.6, 152.4))).isEqualTo("4 × 6 in");
        assertThat(CardSizes.label(new Size(6 * 25.4, 4 * 25.4))).isEqualTo("4 × 6 in");
        assertThat(CardSizes.label(new Size(148, 105))).isEqualTo("A6");
        assertThat(CardSizes.label(CardSizes.parse("90x140mm"))).isEqualTo("90 × 140 mm");
    }

    @Test
    void offersLargerCardsSmallestFirstLyingAlike() throws Trouble {
        assertThat(CardSizes.larger(CardSizes.parse("4x6in").turned(true)))
                .extracting(CardSizes::label)
                .containsExactly("5 × 8 in", "A5");
        assertThat(CardSizes.larger(CardSizes.parse("3x5in")))
                .isEqualTo(List.of(
                        CardSizes.parse("4x6in"),
                        CardSizes.parse("a6"),
                        CardSizes.parse("5x8in"),
                        CardSizes.parse("a5")));
        assertThat(CardSizes.larger(new Size(300, 400))).isEmpty();
    }
}
