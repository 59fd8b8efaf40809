package umbercard.cards.faces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import umbercard.Studies;
import umbercard.cards.CardSizes;
import umbercard.cards.Looks;
import umbercard.cards.Written;
import umbercard.cards.WrittenCard;
import umbercard.cards.WrittenCard.Text;
import umbercard.cards.type.Roboto;
import umbercard.door.Deck;
import umbercard.door.Look;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.model.Level;
import umbercard.model.Mark;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.Thumbnail.Ground;
import umbercard.words.Trouble;

class NotanFaceTest {
    private static final String LONG = "The pond gives the kiln back. ".repeat(20);

    private static Study on(Study study, String size, boolean landscape) throws Trouble {
        return Studies.onCard(study, CardSizes.parse(size), landscape);
    }

    private static WrittenCard written(Study study) throws IOException {
        return Written.cards(study, "notan").get(0);
    }

    private static Rectangle2D frame(WrittenCard card) {
        return WrittenCard.box(card.part("frame"));
    }

    private static List<String> words(WrittenCard card) {
        return card.texts().stream().map(Text::words).toList();
    }

    @Test
    void theFrameIsARectangleOfPaperWithoutAnEdge() throws IOException {
        WrittenCard card = written(Studies.kilnHill());
        assertThat(card.part("frame").getLocalName()).isEqualTo("rect");
        assertThat(card.part("frame").getAttribute("fill")).isEqualTo("#ffffff");
        assertThat(card.part("frame").getAttribute("stroke")).isEmpty();
        assertThat(card.part("notan").getLocalName()).isEqualTo("g");
    }

    @Test
    void theBorderLiesOutsideTheFrame() throws IOException {
        WrittenCard card = written(Studies.kilnHill());
        String corner = card.elements("path").stream()
                .filter(path -> path.getAttribute("fill").equals("none"))
                .findFirst()
                .orElseThrow()
                .getAttribute("d");
        // The frame begins at 5 mm; the border, 0.2 mm wide, runs round it half its width further out.
        assertThat(corner).startsWith("M4.9 4.9L");
    }

    @Test
    void saysTitleConceptAndFigures() throws IOException {
        WrittenCard card = written(Studies.kilnHill());
        long dark = Math.round(100 * Written.design(Studies.kilnHill()).darkShare());
        assertThat(words(card))
                .contains(
                        "Kiln Hill, first snow", dark + " : " + (100 - dark), "Land edge", "64 %", "snow", "12 × 9 in");
        assertThat(String.join(" ", words(card))).contains(Studies.kilnHill().concept());
    }

    @Test
    void theScaleIsThatOfTheOpeningToTheFrame() throws IOException {
        WrittenCard card = written(Studies.kilnHill());
        double times = 11.5 * 25.4 / frame(card).getWidth();
        assertThat(words(card)).contains(String.format("1 : %.2f", times));
    }

    @Test
    void aHorizonIsCalledOne() throws IOException {
        Study study = Studies.kilnHill();
        Thumbnail thumbnail = Studies.thumbnail().withHorizon(Optional.of(Level.at(0.3)));
        assertThat(words(written(study.withThumbnails(List.of(thumbnail)))))
                .contains("Horizon")
                .doesNotContain("Land edge");
    }

    @ParameterizedTest
    @CsvSource({"3x5in", "4x6in", "5x8in", "a6"})
    void onALandscapeCardTheWordsStandBesideALargePicture(String size) throws IOException {
        WrittenCard card = written(on(Studies.kilnHill(), size, true));
        Rectangle2D frame = frame(card);
        Text title = card.text("Kiln Hill, first snow").orElseThrow();
        assertThat(title.x()).isGreaterThan(frame.getMaxX());
        assertThat(frame.getWidth()).isGreaterThan(0.5 * WrittenCard.number(card.root(), "width"));
    }

    @ParameterizedTest
    @CsvSource({"3x5in", "4x6in", "5x8in", "a6"})
    void onAnUprightCardTheWordsStandBelowAPictureOfTheFullWidth(String size) throws IOException {
        WrittenCard card = written(on(Studies.kilnHill(), size, false));
        Rectangle2D frame = frame(card);
        Text title = card.text("Kiln Hill, first snow").orElseThrow();
        assertThat(title.baseline()).isGreaterThan(frame.getMaxY());
        assertThat(frame.getWidth()).isEqualTo(WrittenCard.number(card.root(), "width") - 10, within(0.5));
    }

    @Test
    void aLongerConceptMakesThePictureALittleSmaller() throws IOException {
        Study brief = on(Studies.kilnHill(), "3x5in", true);
        Study longer = brief.withConcept(LONG.substring(0, 260));
        assertThat(frame(written(longer)).getWidth())
                .isLessThan(frame(written(brief)).getWidth());
    }

    @ParameterizedTest
    @CsvSource({"true", "false"})
    void sixHundredCharactersAreRefusedOnTheSmallestCardWithOneThatTakesThem(boolean landscape) throws IOException {
        assertThat(LONG).hasSize(600);
        Study study = on(Studies.kilnHill().withConcept(LONG), "3x5in", landscape);
        assertThatThrownBy(() -> written(study))
                .isInstanceOf(Trouble.class)
                .hasMessageContaining("3 × 5 in")
                .hasMessageMatching("(?s).*take a larger card, (4 × 6 in|A6|5 × 8 in|A5).*")
                .hasMessageMatching("(?s).*shorten the concept by \\d+ characters.*");
        assertThat(String.join(" ", words(written(on(study, "5x8in", landscape)))))
                .contains(LONG.strip());
    }

    @Test
    void aConceptShortenedAsToldFits() throws IOException {
        Study study = on(Studies.kilnHill().withConcept(LONG), "3x5in", true);
        Throwable refused = org.assertj.core.api.Assertions.catchThrowable(() -> written(study));
        int over = Integer.parseInt(refused.getMessage().replaceAll("(?s).* by (\\d+) characters.*", "$1"));
        WrittenCard card = written(study.withConcept(LONG.substring(0, LONG.length() - over)));
        assertThat(card.ids()).contains("frame");
    }

    @Test
    void anEmptyThumbnailIsAnEmptyFrame() throws IOException {
        Study study = Studies.kilnHill().withThumbnails(List.of(Thumbnail.empty("t1", "first")));
        WrittenCard card = written(study);
        assertThat(WrittenCard.evenOddArea(card.part("notan"))).isZero();
        assertThat(words(card)).contains("0 : 100");
    }

    @Test
    void aDarkGroundFillsTheFrame() throws IOException {
        Study study = Studies.kilnHill()
                .withThumbnails(List.of(Thumbnail.empty("t1", "first").withGround(Ground.DARK)));
        WrittenCard card = written(study);
        Rectangle2D frame = frame(card);
        assertThat(WrittenCard.evenOddArea(card.part("notan")))
                .isEqualTo(frame.getWidth() * frame.getHeight(), within(0.01));
    }

    @Test
    void theFocusIsShownOnlyWhenWanted() throws IOException {
        assertThat(written(Studies.kilnHill()).ids()).doesNotContain("focus");
        Study study = Studies.kilnHill();
        Deck deck = new Deck(study, Studies.thumbnail(), Written.design(study), Map.of(), 152.4, 101.6);
        Map<String, Object> values = new HashMap<>(Looks.of(new NotanFace()).values());
        values.put("focusCross", true);
        List<String> ids = Recorder.ids(
                new NotanFace().lay(deck, new Look(values), Roboto.type()).get(0));
        assertThat(ids).contains("focus");
    }

    @Property(tries = 25, seed = "20261124")
    void whateverTheMarksTheDarkAreaIsTheDarkShare(@ForAll("marks") List<Mark> marks) throws IOException {
        Study study = Studies.kilnHill()
                .withThumbnails(List.of(Thumbnail.empty("t1", "first").withMarks(marks)));
        WrittenCard card = written(study);
        Rectangle2D frame = frame(card);
        double share = WrittenCard.evenOddArea(card.part("notan")) / (frame.getWidth() * frame.getHeight());
        assertThat(share).isEqualTo(Written.design(study).darkShare(), within(1e-4));
    }

    /** Circles, rings and triangles, some beyond the frame, laid and lifted by turns. */
    @Provide
    Arbitrary<List<Mark>> marks() {
        return Arbitraries.doubles().between(-0.2, 1.5).list().ofSize(18).map(numbers -> {
            List<Mark> marks = new ArrayList<>();
            for (int i = 0; i < 6; i++) {
                double x = numbers.get(3 * i);
                double y = numbers.get(3 * i + 1);
                double size = 0.05 + Math.abs(numbers.get(3 * i + 2)) / 4;
                Outline outline = i % 3 == 2
                        ? Outline.polygon(List.of(
                                new Point(x, y), new Point(x + size, y + size / 3), new Point(x - size / 2, y + size)))
                        : Studies.circle(x, y, size);
                Mark.Kind kind = i % 2 == 0 ? Mark.Kind.LAY : Mark.Kind.LIFT;
                marks.add(new Mark("m" + i, kind, outline));
            }
            return marks;
        });
    }
}
