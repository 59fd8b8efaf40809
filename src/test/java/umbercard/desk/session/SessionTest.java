package umbercard.desk.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import umbercard.desk.session.Session.Change;
import umbercard.door.Edit;
import umbercard.model.Study;
import umbercard.model.Surface;
import umbercard.model.Thumbnail;
import umbercard.model.edit.Edits;
import umbercard.picture.Picture;
import umbercard.words.Message;

class SessionTest {
    private static final Path FILE = Path.of("hill.json");
    private static final Message NAME = Message.of("desk.concept.done");

    private final Study study = study("hill");
    private final Session session = new Session(study, Optional.empty());
    private final List<Change> told = new ArrayList<>();

    private static Study study(String title) {
        Surface surface = new Surface(12, 9, Surface.Unit.IN, 0, Optional.empty(), false);
        Study bare = Study.begin(title, surface);
        Study one = Edits.addThumbnail(Thumbnail.empty("t1", "first")).apply(bare);
        return Edits.addThumbnail(Thumbnail.empty("t2", "second")).apply(one);
    }

    private static Edit concept(String words) {
        return new Edit(NAME, s -> s.withConcept(words));
    }

    @Test
    void showsTheChosenThumbnailFirst() {
        assertThat(session.shown()).isEqualTo("t1");
        assertThat(new Session(Edits.choose("t2").apply(study), Optional.empty()).shown())
                .isEqualTo("t2");
    }

    @Test
    void aPreviewIsSeenButNotMade() {
        session.listen(told::add);
        session.preview(Optional.of(study.withConcept("as if")));
        assertThat(session.seen().concept()).isEqualTo("as if");
        assertThat(session.study().concept()).isEmpty();
        assertThat(session.isChanged()).isFalse();
        session.edit(concept("why"));
        assertThat(session.seen().concept()).isEqualTo("why");
        assertThat(told).containsExactly(Change.PREVIEW, Change.STUDY, Change.FILE);
    }

    @Test
    void undoOfTheThumbnailOnTheCardShowsAnother() {
        session.edit(new Edit(NAME, Edits.addThumbnail(Thumbnail.empty("t3", "third"))));
        session.show("t3");
        session.undo();
        assertThat(session.shown()).isEqualTo("t1");
    }

    @Test
    void aSavedStudyIsUnchangedAndTakesItsPlacedPhotograph() {
        session.edit(concept("why"));
        Study before = session.study();
        Study placed = before.withTitle("placed");
        session.saved(session.opening(), before, placed, FILE);
        assertThat(session.isChanged()).isFalse();
        assertThat(session.study()).isEqualTo(placed);
        assertThat(session.file()).contains(FILE);
    }

    @Test
    void whatWasEditedDuringTheSaveStaysUnsaved() {
        Study before = session.study();
        session.edit(concept("later"));
        session.saved(session.opening(), before, before, FILE);
        assertThat(session.isChanged()).isTrue();
        assertThat(session.study().concept()).isEqualTo("later");
    }

    @Test
    void aSaveOfAnotherStudyDoesNotGiveThisOneItsFile() {
        long during = session.opening();
        session.open(study("other"), Optional.empty());
        session.saved(during, study, study, FILE);
        assertThat(session.file()).isEmpty();
        assertThat(session.study().title()).isEqualTo("other");
    }

    @Test
    void aFirstSightIsSeenUntilThePhotographIsThere() {
        session.listen(told::add);
        Picture small = new Picture(1, 1, new int[] {1});
        Picture whole = new Picture(1, 1, new int[] {2});
        session.firstSight(small);
        assertThat(session.sight()).contains(small);
        assertThat(session.photograph()).isEmpty();
        session.photograph(Optional.of(whole));
        assertThat(session.sight()).contains(whole);
        session.firstSight(small);
        assertThat(session.sight()).contains(whole);
        assertThat(told).containsExactly(Change.PHOTOGRAPH, Change.PHOTOGRAPH);
    }

    @Test
    void aFirstSightBelongsToItsStudy() {
        session.firstSight(new Picture(1, 1, new int[] {1}));
        session.open(study("other"), Optional.empty());
        assertThat(session.sight()).isEmpty();
    }
}
