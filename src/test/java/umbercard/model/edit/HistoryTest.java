package umbercard.model.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import umbercard.model.Study;
import umbercard.model.Surface;

class HistoryTest {
    private static final Study OPENED =
            Study.begin("0", new Surface(12, 9, Surface.Unit.IN, 0, Optional.empty(), false));

    private final History<String> history = new History<>(OPENED);

    private void edit(String title) {
        history.edit("title " + title, titled(title), Optional.empty());
    }

    private void joined(String title, String key) {
        history.edit("title " + title, titled(title), Optional.of(key));
    }

    private static UnaryOperator<Study> titled(String title) {
        return study -> study.withTitle(title);
    }

    private String title() {
        return history.study().title();
    }

    @Test
    void undoAndRedoWalkThroughEveryState() {
        for (int i = 1; i <= 300; i++) {
            edit("" + i);
        }
        for (int i = 299; i >= 0; i--) {
            history.undo();
            assertThat(title()).isEqualTo("" + i);
        }
        for (int i = 1; i <= 300; i++) {
            history.redo();
            assertThat(title()).isEqualTo("" + i);
        }
    }

    @Test
    void pastEitherEndNothingHappens() {
        history.undo();
        history.redo();
        assertThat(history.study()).isEqualTo(OPENED);
        edit("1");
        history.redo();
        assertThat(title()).isEqualTo("1");
    }

    @Test
    void aNewEditEmptiesRedo() {
        edit("1");
        edit("2");
        history.undo();
        assertThat(history.redoable()).contains("title 2");
        edit("3");
        assertThat(history.redoable()).isEmpty();
        history.redo();
        assertThat(title()).isEqualTo("3");
        history.undo();
        assertThat(title()).isEqualTo("1");
    }

    @Test
    void stepsAreNamedByTheEditTheyTakeBackOrMakeAgain() {
        assertThat(history.undoable()).isEmpty();
        edit("1");
        edit("2");
        assertThat(history.undoable()).contains("title 2");
        history.undo();
        assertThat(history.undoable()).contains("title 1");
        assertThat(history.redoable()).contains("title 2");
        history.redo();
        assertThat(history.undoable()).contains("title 2");
    }

    @Test
    void editsInARowWithOneKeyAreOneStep() {
        edit("1");
        joined("2", "drag");
        joined("3", "drag");
        joined("4", "drag");
        history.undo();
        assertThat(title()).isEqualTo("1");
        history.redo();
        assertThat(title()).isEqualTo("4");
    }

    @Test
    void anotherKeyOrNoneOrAnUndoBetweenBeginsANewStep() {
        joined("1", "drag");
        joined("2", "slide");
        joined("3", "drag");
        edit("4");
        joined("5", "drag");
        history.undo();
        assertThat(title()).isEqualTo("4");
        history.undo();
        assertThat(title()).isEqualTo("3");
        joined("6", "drag");
        history.undo();
        assertThat(title()).isEqualTo("3");
        history.undo();
        assertThat(title()).isEqualTo("2");
    }

    @Test
    void anEditThatChangesNothingLeavesNoStepAndKeepsRedo() {
        edit("1");
        edit("2");
        history.undo();
        edit("1");
        assertThat(history.undoable()).contains("title 1");
        assertThat(history.redoable()).contains("title 2");
        history.redo();
        assertThat(title()).isEqualTo("2");
    }

    @Test
    void aStudyIsChangedWhileItDiffersFromTheSavedOne() {
        assertThat(history.isChanged()).isFalse();
        edit("1");
        assertThat(history.isChanged()).isTrue();
        history.saved(history.study());
        assertThat(history.isChanged()).isFalse();
        history.undo();
        assertThat(history.isChanged()).isTrue();
        history.redo();
        assertThat(history.isChanged()).isFalse();
        edit("0");
        assertThat(history.isChanged()).isTrue();
    }

    @Test
    void whatWasWrittenCountsNotWhatStandsNow() {
        edit("1");
        Study written = history.study();
        edit("2");
        history.saved(written);
        assertThat(history.isChanged()).isTrue();
        history.undo();
        assertThat(history.isChanged()).isFalse();
    }

    @Test
    void afterASaveTheNextEditBeginsANewStep() {
        joined("1", "drag");
        history.saved(history.study());
        joined("2", "drag");
        history.undo();
        assertThat(title()).isEqualTo("1");
    }
}
