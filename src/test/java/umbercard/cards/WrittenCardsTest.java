package umbercard.cards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import umbercard.Studies;
import umbercard.cards.WrittenCard.Text;
import umbercard.geometry.Size;
import umbercard.model.ColorNote;
import umbercard.model.Stick;
import umbercard.model.Study;

/** What must hold on every card, read from the written file by an independent reader. */
class WrittenCardsTest {
    /** A study and the sides written for it. */
    record Case(String name, Study study, WrittenCard notan, List<WrittenCard> notes) {
        List<WrittenCard> sides() {
            return Stream.concat(Stream.of(notan), notes.stream()).toList();
        }

        @Override
        public String toString() {
            return name;
        }
    }

    private static final List<Case> CASES = new ArrayList<>();

    /** Sizes and how they lie, each with a study: few notes, many, and words longer than any painter writes. */
    @BeforeAll
    static void write() throws IOException {
        for (String size : List.of("3x5in", "4x6in", "5x8in", "a6")) {
            for (boolean landscape : new boolean[] {false, true}) {
                Size card = CardSizes.parse(size);
                String name = size + (landscape ? " landscape" : " upright");
                add(name, Studies.onCard(Studies.kilnHill(), card, landscape));
                add(name + ", many", Studies.onCard(Studies.withNotes(24), card, landscape));
                add(name + ", wordy", Studies.onCard(wordy(), card, landscape));
            }
        }
    }

    private static void add(String name, Study study) throws IOException {
        WrittenCard notan = Written.cards(study, "notan").get(0);
        CASES.add(new Case(name, study, notan, Written.cards(study, "color-notes")));
    }

    static Stream<Case> cases() {
        return CASES.stream();
    }

    private static Study wordy() {
        List<ColorNote> notes = new ArrayList<>();
        for (ColorNote note : Studies.notes(11)) {
            Stick stick = note.stick()
                    .withName(Optional.of(note.stick().title() + " out of the second winter drawer"))
                    .withSlot(Optional.of(new Stick.Slot(12, 14)));
            notes.add(note.withStick(stick)
                    .withPurpose(notes.size() % 3 == 0 ? "the glow where low sun strikes the bank" : note.purpose())
                    .withBreakBefore(notes.size() % 4 == 2));
        }
        return Studies.kilnHill()
                .withNotes(notes)
                .withTitle("The old lime kiln above the mill pond on the morning of the first snow")
                .withConcept(
                        "The kiln holds its dark against the first snow, and the pond gives it back a tone lighter; "
                                + "all else is there so that the eye may come to the kiln and rest in its door.");
    }

    private static Size card(Study study) {
        return study.cards().card().turned(study.cards().landscape());
    }

    @ParameterizedTest
    @MethodSource("cases")
    void everySideIsOfTheCardsSizeAndAUnitIsAMillimeter(Case one) {
        Size card = card(one.study());
        for (WrittenCard side : one.sides()) {
            assertThat(side.root().getAttribute("width")).endsWith("mm");
            assertThat(side.root().getAttribute("height")).endsWith("mm");
            assertThat(WrittenCard.number(side.root(), "width")).isEqualTo(card.width(), within(1e-6));
            assertThat(WrittenCard.number(side.root(), "height")).isEqualTo(card.height(), within(1e-6));
            double[] box = Stream.of(side.root().getAttribute("viewBox").split(" "))
                    .mapToDouble(Double::parseDouble)
                    .toArray();
            assertThat(box).containsExactly(new double[] {0, 0, card.width(), card.height()}, within(1e-6));
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void theDarkAreaIsTheDarkShare(Case one) {
        WrittenCard side = one.notan();
        Rectangle2D frame = WrittenCard.box(side.part("frame"));
        assertThat(frame.getWidth() / frame.getHeight()).isEqualTo(one.study().ratio(), within(1e-4));
        double share = WrittenCard.evenOddArea(side.part("notan")) / (frame.getWidth() * frame.getHeight());
        assertThat(share).isEqualTo(Written.design(one.study()).darkShare(), within(1e-4));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void stripsStandInTheStudysOrderWithTheirSticksColor(Case one) {
        List<Element> strips = new ArrayList<>();
        for (WrittenCard side : one.notes()) {
            strips.addAll(WrittenCard.elements(side.root(), "g").stream()
                    .filter(group -> group.getAttribute("id").matches("strip-\\d+"))
                    .toList());
        }
        assertThat(strips).hasSameSizeAs(one.study().notes());
        for (int i = 0; i < strips.size(); i++) {
            ColorNote note = one.study().notes().get(i);
            assertThat(strips.get(i).getAttribute("id")).isEqualTo("strip-" + (i + 1));
            Element color = WrittenCard.elements(strips.get(i), "rect").get(0);
            assertThat(color.getAttribute("fill"))
                    .isEqualTo(String.format("#%06x", note.stick().color().srgb()));
            assertThat(WrittenCard.title(strips.get(i))).contains(note.stick().title());
            List<String> words =
                    WrittenCard.texts(strips.get(i)).stream().map(Text::words).toList();
            assertThat(words)
                    .contains(
                            Integer.toString(i + 1),
                            note.stick().slot().orElseThrow().label());
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void noWordLeavesTheCardOrRunsIntoAnother(Case one) {
        Size card = card(one.study());
        double margin = 5;
        for (WrittenCard side : one.sides()) {
            for (Text text : side.texts()) {
                assertThat(text.points()).as(text.words()).isGreaterThanOrEqualTo(8.9999);
                assertThat(text.x()).as(text.words()).isGreaterThanOrEqualTo(margin - 1e-3);
                assertThat(text.right()).as(text.words()).isLessThanOrEqualTo(card.width() - margin + 0.1);
                assertThat(text.x() + 1.1 * text.width()).as(text.words()).isLessThan(card.width());
                assertThat(text.baseline() - text.size()).as(text.words()).isGreaterThan(0);
                assertThat(text.baseline()).as(text.words()).isLessThanOrEqualTo(card.height() - margin + 1e-3);
            }
            assertNoneMeet(side.texts());
        }
    }

    /** On one baseline words may be a tenth wider; between baselines less than three quarters of a line apart none overlap. */
    private static void assertNoneMeet(List<Text> texts) {
        List<Text> sorted =
                texts.stream().sorted(Comparator.comparingDouble(Text::x)).toList();
        for (int i = 0; i < sorted.size(); i++) {
            for (Text later : sorted.subList(i + 1, sorted.size())) {
                Text text = sorted.get(i);
                double apart = Math.abs(text.baseline() - later.baseline());
                double line = Math.min(text.size(), later.size());
                if (apart < 0.75 * line) {
                    double slack = apart < 0.01 ? 1.09 : 1;
                    assertThat(text.x() + slack * text.width())
                            .as(text.words() + " | " + later.words())
                            .isLessThanOrEqualTo(later.x());
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void wordsKeepOffPatchesAndPicture(Case one) {
        for (WrittenCard side : one.sides()) {
            List<Rectangle2D> boxes = WrittenCard.elements(side.root(), "rect").stream()
                    .filter(rect -> !rect.getAttribute("id").isEmpty())
                    .map(WrittenCard::box)
                    .toList();
            for (Text text : side.texts()) {
                Rectangle2D words = new Rectangle2D.Double(
                        text.x(), text.baseline() - 0.7 * text.size(), text.width(), 0.7 * text.size());
                assertThat(boxes).noneMatch(box -> box.intersects(words));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void everyPatchTakesAStickAndEndsInMiddleGray(Case one) {
        for (WrittenCard side : one.notes()) {
            for (Element strip : WrittenCard.elements(side.root(), "g")) {
                if (strip.getAttribute("id").startsWith("strip-")) {
                    Rectangle2D color =
                            WrittenCard.box(WrittenCard.elements(strip, "rect").get(0));
                    Element gray = WrittenCard.elements(strip, "path").get(0);
                    // Value 5 by ASTM D1535 is Y = 19.27 %, which IEC 61966-2-1 encodes as 121 of 255.
                    assertThat(gray.getAttribute("fill")).isEqualTo("#797979");
                    double third = WrittenCard.evenOddArea(only(strip, gray)) / color.getHeight();
                    assertThat(3 * third).isGreaterThanOrEqualTo(18 - 1e-3);
                    assertThat(color.getHeight()).isGreaterThanOrEqualTo(10);
                }
            }
        }
    }

    private static Element only(Element strip, Element path) {
        Element copy = (Element) strip.cloneNode(false);
        copy.appendChild(path.cloneNode(true));
        return copy;
    }

    @ParameterizedTest
    @MethodSource("cases")
    void everyIdComesOnce(Case one) {
        for (WrittenCard side : one.sides()) {
            assertThat(side.ids()).doesNotHaveDuplicates();
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void theConceptStandsWholeOnEverySide(Case one) {
        for (WrittenCard side : one.sides()) {
            String all = String.join(" ", side.texts().stream().map(Text::words).toList());
            assertThat(all).contains(one.study().concept());
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void twoWritesAreTheSameBytes(Case one) throws IOException {
        Map<String, byte[]> once = Written.files(one.study(), "notan", "color-notes");
        Map<String, byte[]> again = Written.files(one.study(), "notan", "color-notes");
        assertThat(again.keySet()).containsExactlyElementsOf(once.keySet());
        once.forEach((name, bytes) -> assertThat(again.get(name)).isEqualTo(bytes));
    }
}
