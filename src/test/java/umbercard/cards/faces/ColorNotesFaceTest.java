package umbercard.cards.faces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;
import umbercard.Studies;
import umbercard.cards.CardSizes;
import umbercard.cards.Written;
import umbercard.cards.WrittenCard;
import umbercard.cards.WrittenCard.Text;
import umbercard.model.ColorNote;
import umbercard.model.Study;
import umbercard.words.Trouble;

class ColorNotesFaceTest {
    private static Study on(Study study, String size, boolean landscape) throws Trouble {
        return Studies.onCard(study, CardSizes.parse(size), landscape);
    }

    private static long strips(WrittenCard card) {
        return card.ids().stream().filter(id -> id.matches("strip-\\d+")).count();
    }

    private static List<String> words(Element within) {
        return WrittenCard.texts(within).stream().map(Text::words).toList();
    }

    @ParameterizedTest
    @CsvSource({"false", "true"})
    void twoDozenNotesRunOverFourOfTheSmallestCards(boolean landscape) throws IOException {
        Map<String, byte[]> files = Written.files(on(Studies.withNotes(24), "3x5in", landscape), "color-notes");
        assertThat(files.keySet())
                .containsExactly(
                        "kiln-hill-first-snow-color-notes-1.svg",
                        "kiln-hill-first-snow-color-notes-2.svg",
                        "kiln-hill-first-snow-color-notes-3.svg",
                        "kiln-hill-first-snow-color-notes-4.svg");
        int number = 1;
        for (byte[] file : files.values()) {
            assertThat(words(WrittenCard.read(file).root())).contains(number++ + " of 4");
        }
    }

    @ParameterizedTest
    @CsvSource({"3x5in, 7", "4x6in, 9"})
    void anUprightCardHoldsAboutSoMany(String size, int about) throws IOException {
        List<WrittenCard> cards = Written.cards(on(Studies.withNotes(24), size, false), "color-notes");
        assertThat(strips(cards.get(0))).isBetween(about - 1L, about + 1L);
    }

    @Test
    void stripsStandThirteenMillimetersApart() throws IOException {
        WrittenCard card = Written.cards(on(Studies.kilnHill(), "4x6in", false), "color-notes")
                .get(0);
        double first = WrittenCard.number(card.part("strip-1-color"), "y");
        assertThat(WrittenCard.number(card.part("strip-2-color"), "y") - first).isEqualTo(13, within(1e-3));
        assertThat(WrittenCard.number(card.part("strip-9-color"), "y") - first).isEqualTo(8 * 13, within(1e-3));
    }

    @Test
    void aStripSaysAllThatIsNeeded() throws IOException {
        WrittenCard card = Written.cards(on(Studies.kilnHill(), "4x6in", true), "color-notes")
                .get(0);
        Element third = card.part("strip-3");
        // Spruce, #3c4a3c, in the fourth row's fifth place; value by ASTM D1535.
        assertThat(words(third))
                .containsExactly("3", "D5", "3.0", "Spruce", "far ridge, land edge", "slanting left, firm touch");
        assertThat(WrittenCard.title(third))
                .isEqualTo("3: D5 Spruce, value 3.0, far ridge, land edge, slanting left, firm touch");
    }

    @Test
    void numberPlaceAndValueAreTwelvePoints() throws IOException {
        WrittenCard card = Written.cards(Studies.kilnHill(), "color-notes").get(0);
        List<Text> texts = WrittenCard.texts(card.part("strip-3"));
        assertThat(texts.subList(0, 3))
                .allSatisfy(text -> assertThat(text.points()).isEqualTo(12, within(0.01)));
    }

    @Test
    void valuesStandUnderOneAnother() throws IOException {
        WrittenCard card = Written.cards(on(Studies.kilnHill(), "4x6in", false), "color-notes")
                .get(0);
        for (int i = 1; i <= 9; i++) {
            Text value = WrittenCard.texts(card.part("strip-" + i)).get(2);
            assertThat(value.words()).matches("\\d\\.\\d");
            assertThat(value.right()).isEqualTo(101.6 - 5, within(0.05));
        }
    }

    @Test
    void remindsThatPrintedColorOnlyGuides() throws IOException {
        for (String size : List.of("3x5in", "5x8in")) {
            for (WrittenCard card : Written.cards(on(Studies.kilnHill(), size, false), "color-notes")) {
                assertThat(words(card.root())).contains("Printed color only guides");
            }
        }
    }

    @Test
    void aNewSessionIsMarkedOverItsStrip() throws IOException {
        List<ColorNote> notes = new ArrayList<>(Studies.notes(5));
        notes.set(3, notes.get(3).withBreakBefore(true));
        WrittenCard card = Written.cards(on(Studies.kilnHill().withNotes(notes), "4x6in", false), "color-notes")
                .get(0);
        double word = card.text("next session").orElseThrow().baseline();
        assertThat(word).isGreaterThan(WrittenCard.number(card.part("strip-3-color"), "y") + 10);
        assertThat(word).isLessThan(WrittenCard.number(card.part("strip-4-color"), "y"));
    }

    @Test
    void thePaintersOwnWordsAreOnTheCardWhateverItsSize() throws IOException {
        List<ColorNote> notes = new ArrayList<>(Studies.notes(4));
        notes.set(2, notes.get(2).withWords("drag it sideways").withLayer(2));
        for (String size : List.of("3x5in", "4x6in", "5x8in")) {
            for (boolean landscape : List.of(true, false)) {
                WrittenCard card = Written.cards(
                                on(Studies.kilnHill().withNotes(notes), size, landscape), "color-notes")
                        .get(0);
                assertThat(words(card.part("strip-3")))
                        .as(size + landscape)
                        .anyMatch(line -> line.startsWith("layer 2, drag it s"));
            }
        }
    }

    @Test
    void aNoteWithNothingButAStickIsLaid() throws IOException {
        ColorNote bare = Studies.notes(1)
                .get(0)
                .withStick(Studies.sticks().get(0).withName(Optional.empty()).withSlot(Optional.empty()))
                .withZone(Optional.empty())
                .withPurpose("");
        WrittenCard card = Written.cards(Studies.kilnHill().withNotes(List.of(bare)), "color-notes")
                .get(0);
        assertThat(words(card.part("strip-1"))).containsExactly("1", "9.5", "s1", "flat, light touch");
    }

    @Test
    void aStudyWithoutNotesHasNoSuchCard() throws IOException {
        assertThat(Written.files(Studies.withNotes(0), "notan", "color-notes").keySet())
                .containsExactly("kiln-hill-first-snow-notan.svg");
    }

    @ParameterizedTest
    @CsvSource({"true", "false"})
    void aConceptThatLeavesNoRoomForStripsIsRefusedWithACardThatTakesIt(boolean landscape) throws IOException {
        Study study =
                on(Studies.kilnHill().withConcept("The pond gives the kiln back. ".repeat(20)), "3x5in", landscape);
        assertThatThrownBy(() -> Written.cards(study, "color-notes"))
                .isInstanceOf(Trouble.class)
                .hasMessageContaining("3 × 5 in")
                .hasMessageContaining("take a larger card, 4 × 6 in");
        assertThat(Written.cards(on(study, "4x6in", landscape), "color-notes")).isNotEmpty();
    }

    @Test
    void columnsOfTheLastCardAreLevel() throws IOException {
        WrittenCard card = Written.cards(on(Studies.kilnHill(), "5x8in", true), "color-notes")
                .get(0);
        double left = WrittenCard.number(card.part("strip-1-color"), "x");
        long inFirst = card.ids().stream()
                .filter(id -> id.endsWith("-color"))
                .filter(id -> Math.abs(WrittenCard.number(card.part(id), "x") - left) < 0.01)
                .count();
        assertThat(inFirst).isEqualTo(5);
    }
}
