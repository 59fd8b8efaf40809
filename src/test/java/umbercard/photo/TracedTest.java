package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.model.Frame;
import umbercard.model.Level;
import umbercard.model.Mark;
import umbercard.model.Study;
import umbercard.model.Surface;
import umbercard.model.Thumbnail;
import umbercard.model.edit.Edits;

/** What becomes of traced marks in a study. */
class TracedTest {
    private static final Mark MARK = new Mark("m1", Mark.Kind.LAY, Outline.rectangle(0, 0.5, 1, 1));
    private static final FirstPass.Traced TRACED =
            new FirstPass.Traced(Thumbnail.Ground.LIGHT, List.of(MARK), 4.5, 0.4, 2);

    private static Study with(Thumbnail chosen) {
        Surface surface = new Surface(12, 9, Surface.Unit.IN, 0, Optional.empty(), false);
        return Edits.addThumbnail(chosen).apply(Study.begin("hill", surface));
    }

    @Test
    void takesABareCardsPlaceAsTheChosenOne() {
        Study study = TRACED.addedTo(with(Thumbnail.empty("t1", "first")), Optional.empty(), "t2", "traced");
        assertThat(study.chosen()).contains("t2");
    }

    @Test
    void leavesACardWithMarksChosenAndGivesItsOwnMarksOtherIds() {
        Study study = TRACED.addedTo(
                with(Thumbnail.empty("t1", "first").withMarks(List.of(MARK))), Optional.empty(), "t2", "traced");
        assertThat(study.chosen()).contains("t1");
        assertThat(study.thumbnail("t2").orElseThrow().marks().get(0).id()).isEqualTo("m2");
    }

    @Test
    void carriesTheFrameTheLinesAndTheFocusOver() {
        Frame own = new Frame(new Point(0.4, 0.5), 0.6, 2, true);
        Thumbnail drawn = Thumbnail.empty("t1", "first")
                .withFrame(Optional.of(own))
                .withHorizon(Optional.of(Level.at(0.4)))
                .withFocus(Optional.of(new Point(0.9, 0.4)));
        Thumbnail traced = TRACED.addedTo(with(drawn), Optional.of(drawn), "t2", "traced")
                .thumbnail("t2")
                .orElseThrow();
        assertThat(traced.frame()).contains(own);
        assertThat(traced.horizon()).contains(Level.at(0.4));
        assertThat(traced.focus()).contains(new Point(0.9, 0.4));
    }

    @Test
    void carriesNothingOverWhereNothingIsFramedAlike() {
        Thumbnail drawn = Thumbnail.empty("t1", "first")
                .withHorizon(Optional.of(Level.at(0.4)))
                .withFrame(Optional.of(Frame.largest(1.5, 1.333)));
        Thumbnail traced = TRACED.addedTo(with(drawn), Optional.empty(), "t2", "traced")
                .thumbnail("t2")
                .orElseThrow();
        assertThat(traced.horizon()).isEmpty();
        assertThat(traced.frame()).isEmpty();
    }
}
