package umbercard.cards.faces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;
import umbercard.Studies;
import umbercard.cards.CardSizes;
import umbercard.cards.Written;
import umbercard.cards.WrittenCard;
import umbercard.geometry.Size;
import umbercard.model.ColorNote;
import umbercard.model.Study;

/** Holds the places that are read from a photographed card to what was written on the printed one. */
class RubbedStripTest {

    @ParameterizedTest
    @CsvSource({"3x5in, false", "4x6in, true", "5x8in, true"})
    void everyPatchIsWhereItIsPrinted(String size, boolean landscape) throws IOException {
        Study study = Studies.onCard(Studies.withNotes(24), CardSizes.parse(size), landscape);
        List<WrittenCard> cards = Written.cards(study, "color-notes");
        List<List<RubbedStrip>> rubbed = ColorNotesFace.rubbed(study);

        assertThat(rubbed).hasSameSizeAs(cards);
        assertThat(rubbed.stream().flatMap(List::stream).map(RubbedStrip::stick))
                .containsExactlyElementsOf(
                        study.notes().stream().map(ColorNote::stick).toList());
        for (int i = 0; i < cards.size(); i++) {
            for (RubbedStrip strip : rubbed.get(i)) {
                Element color = cards.get(i).part("strip-" + (strip.note() + 1) + "-color");
                double top = WrittenCard.number(color, "y");
                double right = WrittenCard.number(color, "x") + WrittenCard.number(color, "width");
                assertThat(strip.patch().corner().x()).isCloseTo(right, within(1e-3));
                assertThat(strip.patch().corner().y()).isCloseTo(top, within(1e-3));
                assertThat(strip.patch().size().height()).isCloseTo(WrittenCard.number(color, "height"), within(1e-3));
                assertThat(strip.gray().corner().x())
                        .isCloseTo(right + strip.patch().size().width(), within(1e-3));
                // Two thirds are for the stick, one is printed gray; 18 mm together at least.
                assertThat(strip.patch().size().width())
                        .isCloseTo(2 * strip.gray().size().width(), within(1e-9))
                        .isGreaterThanOrEqualTo(12);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"3x5in, false", "4x6in, true"})
    void bareCardLiesInTheMargins(String size, boolean landscape) throws IOException {
        Study study = Studies.onCard(Studies.withNotes(9), CardSizes.parse(size), landscape);
        Size card = study.cards().card().turned(landscape);
        assertThat(ColorNotesFace.rubbed(study).stream().flatMap(List::stream))
                .isNotEmpty()
                .allSatisfy(strip -> assertThat(strip.bare()).hasSize(2).allSatisfy(bare -> {
                    double left = bare.corner().x();
                    double right = left + bare.size().width();
                    assertThat(left >= 1 && right <= 4 || left >= card.width() - 4 && right <= card.width() - 1)
                            .isTrue();
                    assertThat(bare.size().width()).isPositive();
                }));
    }
}
