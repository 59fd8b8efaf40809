package umbercard.readings.order;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import umbercard.door.Figure;
import umbercard.door.Finding;
import umbercard.door.Finding.Verdict;
import umbercard.door.Limits;
import umbercard.door.Place;
import umbercard.door.Plan;
import umbercard.model.ColorNote;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.notan.Fold;
import umbercard.store.Samples;
import umbercard.words.Words;

class ApplicationOrderTest {
    private final ApplicationOrder reading = new ApplicationOrder();
    private final Study study = Samples.kilnHill().study();

    private Finding read(Study of) {
        Thumbnail thumbnail = of.chosenThumbnail().orElseThrow();
        Plan plan = new Plan(of, thumbnail, Fold.of(thumbnail, of.ratio()), Optional.empty(), () -> false);
        return reading.read(plan, Limits.of(reading.rule(), java.util.Map.of()));
    }

    /** The first darks and the land edge, and the sky after them: design of the sample, common practice. */
    private Study with(int... places) {
        List<ColorNote> notes = new ArrayList<>();
        for (int place : places) {
            notes.add(study.notes().get(place));
        }
        return study.withNotes(notes);
    }

    @Test
    void holdsForDarksLandEdgeSky() {
        Finding finding = read(with(0, 1, 2, 3));
        assertThat(finding.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(finding.places()).isEmpty();
    }

    @Test
    void namesThePairTheReasonAndThePlaces() {
        Finding finding = read(with(0, 3, 2));
        assertThat(finding.verdict()).isEqualTo(Verdict.LOOK_AGAIN);
        assertThat(Words.say(finding.sentence()))
                .isEqualTo(
                        "Low cloud stands before Far slate, against the order of application: the land edge before the sky."
                                + " Arrange the card, or move one of them.");
        assertThat(finding.places()).containsExactly(new Place.Of(List.of("z1", "z2"), List.of("n4", "n3")));
        assertThat(finding.figures()).extracting(Figure::value).first().isEqualTo(1.0);
    }

    @Test
    void aRuleTheStudyPassesOverIsNotTold() {
        assertThat(read(with(0, 3, 2).withRulesOff(Set.of("land-edge-before-sky")))
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
    }

    @Test
    void whatOnlyDustWouldHaveOtherwiseIsAFigure() {
        Finding finding = read(with(1, 0));
        Finding turned = read(with(0, 1));
        assertThat(List.of(finding.verdict(), turned.verdict())).containsOnly(Verdict.HOLDS);
        assertThat(finding.figures().get(1).value() + turned.figures().get(1).value())
                .isEqualTo(1);
    }

    @Test
    void aSingleNoteIsNotSet() {
        assertThat(read(with(0)).verdict()).isEqualTo(Verdict.NOT_SET);
    }
}
