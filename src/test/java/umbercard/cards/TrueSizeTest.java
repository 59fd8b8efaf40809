package umbercard.cards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import umbercard.cards.svg.SvgWriter;
import umbercard.cards.type.Roboto;
import umbercard.door.Pages;
import umbercard.geometry.Size;
import umbercard.words.Trouble;

/** Written cards against the true-size checks of svg_print.csv (CSS Values and Units: 1 in = 25.4 mm = 96 px = 72 pt). */
class TrueSizeTest {
    private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");

    static Stream<Reference.Row> checks() {
        return Reference.rows("svg_print.csv").stream()
                .filter(row -> row.get("topic").equals("true-size check"));
    }

    /** {@code 3x5 in card, landscape} and the like, as a painter writes it. */
    private static Size size(String item) throws Trouble {
        String name = item.substring(0, item.indexOf(','));
        String written = switch (name) {
            case "Letter" -> "8.5x11in";
            case "A4" -> "210x297mm";
            default -> name.replace(" card", "").replace(" ", "");
        };
        return CardSizes.parse(written).turned(item.endsWith("landscape"));
    }

    @ParameterizedTest
    @MethodSource("checks")
    void cardsHaveTheirTrueSizeInEveryUnit(Reference.Row row) throws IOException {
        Size size = size(row.get("item"));
        Written shelf = new Written();
        Pages pages = new Pages("card", "card", "", size.width(), size.height(), List.of(d -> {}), Roboto.type(), 300);
        new SvgWriter().write(pages, shelf, () -> false);
        Element root = WrittenCard.read(shelf.files().get("card.svg")).root();
        double[] wide = {WrittenCard.number(root, "width"), WrittenCard.number(root, "height")};

        List<Double> published = NUMBER.matcher(row.get("value"))
                .results()
                .map(MatchResult::group)
                .map(Double::valueOf)
                .toList();
        for (int i = 0; i < 2; i++) {
            assertThat(wide[i]).isEqualTo(published.get(i), within(1e-9));
            assertThat(wide[i] * 96 / 25.4).isEqualTo(published.get(2 + i), within(1e-6));
            assertThat(wide[i] * 72 / 25.4).isEqualTo(published.get(4 + i), within(1e-6));
        }
        // SVG 2, equivalent transform of a viewport: both scales are width / view box width, here one millimeter a
        // unit.
        assertThat(root.getAttribute("viewBox"))
                .isEqualTo("0 0 " + root.getAttribute("width").replace("mm", "") + " "
                        + root.getAttribute("height").replace("mm", ""));
    }
}
