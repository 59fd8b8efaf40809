package umbercard.rubbed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import umbercard.Studies;
import umbercard.cards.CardSizes;
import umbercard.cards.Written;
import umbercard.cards.WrittenCard;
import umbercard.color.Lab;
import umbercard.geometry.Point;
import umbercard.model.ColorNote;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.photo.CardMarks;
import umbercard.photo.CardMarks.Patch;
import umbercard.photo.CardMarks.Printed;
import umbercard.photo.RubbedCard.Findings;
import umbercard.photo.RubbedCard.Look;
import umbercard.photo.RubbedCard.Rubbed;
import umbercard.rubbed.Learned.OfStick;
import umbercard.words.Trouble;

/** Holds the marks to the SVG that is printed, and what is learned to hand-made findings. */
class RubbedNotesTest {
    /** N 5 on paper of N 9.5: 19.27 % of 87.8 % of all light (ASTM D1535, Y of 5 and 9.5 by its quintic) is 16.9 %, N 4.72. */
    private static final double PRINTED_GRAY = 4.72;

    private static final List<Point> CORNERS =
            List.of(new Point(9, 8), new Point(1500, 12), new Point(1490, 1000), new Point(11, 990));

    @ParameterizedTest
    @CsvSource({"3x5in, false, 1", "3x5in, false, 3", "4x6in, true, 2", "5x8in, true, 1"})
    void aCardHasAPatchForEachPrintedStripAndWhatItIsReadBy(String size, boolean landscape, int number)
            throws IOException {
        Study study = Studies.onCard(Studies.withNotes(24), CardSizes.parse(size), landscape);
        WrittenCard written = Written.cards(study, "color-notes").get(number - 1);
        List<Integer> strips = IntStream.rangeClosed(1, 24)
                .filter(strip -> written.ids().contains("strip-" + strip))
                .boxed()
                .toList();
        RubbedNotes card = RubbedNotes.cardsOf(study).get(number - 1);
        CardMarks marks = card.marks(CORNERS);

        assertThat(marks.corners()).isEqualTo(CORNERS);
        assertThat(marks.card()).isEqualTo(CardSizes.parse(size).turned(landscape));
        assertThat(card.learned(told(strips.size())).sticks())
                .extracting(OfStick::stick)
                .isEqualTo(strips.stream()
                        .map(strip -> study.notes().get(strip - 1).stick())
                        .toList());
        assertThat(marks.patches()).hasSameSizeAs(strips);
        for (int i = 0; i < strips.size(); i++) {
            Rectangle2D color = WrittenCard.box(written.part("strip-" + strips.get(i) + "-color"));
            Patch patch = marks.patches().get(i);
            assertThat(patch.corner().x()).isCloseTo(color.getMaxX(), within(1e-3));
            assertThat(patch.corner().y()).isCloseTo(color.getY(), within(1e-3));
            assertThat(marks.printed())
                    .filteredOn(printed -> Math.abs(printed.value() - PRINTED_GRAY) < 0.005)
                    .extracting(Printed::corner)
                    .contains(patch.corner().plus(patch.size().width(), 0));
        }
        // Strips side by side have the same bare margins.
        long rows = marks.patches().stream()
                .map(patch -> patch.corner().y())
                .distinct()
                .count();
        assertThat(marks.printed())
                .hasSize(strips.size() + (int) (2 * rows))
                .filteredOn(printed -> printed.value() == 9.5)
                .hasSize((int) (2 * rows));
    }

    private static Findings told(int patches) {
        return new Findings(Collections.nCopies(patches, patch(30, 1, 2, Look.RUBBED)), patches, 0);
    }

    private static RubbedNotes rubbing(int... sticks) throws Trouble {
        List<Stick> all = Studies.sticks();
        List<ColorNote> notes = new ArrayList<>();
        for (int stick : sticks) {
            notes.add(ColorNote.of("n" + notes.size(), all.get(stick)));
        }
        return RubbedNotes.cardsOf(Studies.kilnHill().withNotes(notes)).get(0);
    }

    private static Rubbed patch(double l, double a, double b, Look look) {
        return new Rubbed("any", new Lab(l, a, b), 1, look);
    }

    @Test
    void aStickRubbedOnSeveralPatchesTakesTheirMedianInEachCoordinate() throws Trouble {
        Learned learned = rubbing(4, 7, 4, 9, 4, 9)
                .learned(new Findings(
                        List.of(
                                patch(30, 9, -2, Look.RUBBED),
                                patch(71, 3, 14, Look.RUBBED),
                                patch(34, 4, -7, Look.RUBBED),
                                patch(40, 10, 20, Look.RUBBED),
                                patch(50, 5, -3, Look.RUBBED),
                                patch(44, 13, 10, Look.RUBBED)),
                        6,
                        1));
        List<Stick> known = Studies.sticks();
        assertThat(learned.told())
                .extracting(OfStick::now)
                .containsExactly(
                        known.get(4).withColor(new Lab(34, 5, -3)),
                        known.get(7).withColor(new Lab(71, 3, 14)),
                        known.get(9).withColor(new Lab(42, 11.5, 15)));
        assertThat(learned.untold()).isEmpty();
        assertThat(learned.graysLeftOut()).isEqualTo(1);
    }

    @Test
    void onlyWhatWasSurelyRubbedTellsAColor() throws Trouble {
        Learned learned = rubbing(4, 4, 5, 6, 7)
                .learned(new Findings(
                        List.of(
                                patch(90, 0, 0, Look.BARE),
                                patch(34, 4, -7, Look.RUBBED),
                                patch(80, 0, 0, Look.BARE),
                                patch(80, 0, 0, Look.GLARE),
                                patch(80, 0, 0, Look.UNCERTAIN)),
                        5,
                        0));
        List<Stick> known = Studies.sticks();
        assertThat(learned.told())
                .extracting(OfStick::now)
                .containsExactly(known.get(4).withColor(new Lab(34, 4, -7)));
        assertThat(learned.untold()).extracting(OfStick::look).containsExactly(Look.BARE, Look.GLARE, Look.UNCERTAIN);
        assertThat(learned.untold()).extracting(OfStick::now).containsExactly(known.get(5), known.get(6), known.get(7));
    }

    @Test
    void aStudyWithoutNotesHasNoCard() throws Trouble {
        assertThat(RubbedNotes.cardsOf(Studies.withNotes(0))).isEmpty();
    }
}
