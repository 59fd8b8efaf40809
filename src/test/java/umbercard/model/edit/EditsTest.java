package umbercard.model.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import umbercard.geometry.Node;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.model.Mark;
import umbercard.model.Study;
import umbercard.model.Surface;
import umbercard.model.Thumbnail;

class EditsTest {
    private static final Study STUDY = Study.begin(
                    "Hill", new Surface(12, 9, Surface.Unit.IN, 0.25, Optional.empty(), true))
            .withThumbnails(List.of(Thumbnail.empty("t1", "first"), Thumbnail.empty("t2", "second")));

    @Test
    void coordinatesSnapToTheGrid() {
        Node node = new Node(
                new Point(0.123456749, 1.99999996), new Point(-0.00000004, 0.5), new Point(1e-7, 0.3333333333), true);
        Outline snapped = Edits.snapped(new Outline(List.of(node)));
        assertThat(snapped.nodes())
                .containsExactly(
                        new Node(new Point(0.1234567, 2), new Point(0, 0.5), new Point(0.0000001, 0.3333333), true));
        assertThat(Edits.snapped(snapped)).isEqualTo(snapped);
    }

    @Test
    void aMarkGoesOnTopAndIsSnapped() {
        Mark first = new Mark("m1", Mark.Kind.LAY, Outline.rectangle(0, 0, 1, 0.5));
        Mark second = new Mark("m2", Mark.Kind.LIFT, Outline.rectangle(0.11111111111, 0, 1, 1));
        Study after =
                Edits.addMark("t2", second).apply(Edits.addMark("t2", first).apply(STUDY));
        assertThat(after.thumbnails().get(0)).isEqualTo(STUDY.thumbnails().get(0));
        assertThat(after.thumbnails().get(1).marks())
                .containsExactly(first, second.withOutline(Outline.rectangle(0.1111111, 0, 1, 1)));
        assertThat(STUDY.thumbnails().get(1).marks()).isEmpty();
    }

    @Test
    void theFirstThumbnailOfAStudyIsChosenAndLaterOnesAreNot() {
        Study one = Edits.addThumbnail(Thumbnail.empty("x", "x")).apply(STUDY.withThumbnails(List.of()));
        assertThat(one.chosen()).contains("x");
        Study two = Edits.addThumbnail(Thumbnail.empty("y", "y")).apply(one);
        assertThat(two.chosen()).contains("x");
        assertThat(two.thumbnails()).extracting(Thumbnail::id).containsExactly("x", "y");
    }

    @Test
    void onlyAThumbnailThatIsThereIsChosen() {
        assertThat(Edits.choose("t2").apply(STUDY).chosen()).contains("t2");
        assertThat(Edits.choose("gone").apply(STUDY)).isEqualTo(STUDY);
    }

    @Test
    void whatTheStudyDoesNotHaveChangesNothing() {
        assertThat(Edits.thumbnail("gone", t -> t.withName("x")).apply(STUDY)).isEqualTo(STUDY);
        Mark mark = new Mark("m1", Mark.Kind.LAY, Outline.rectangle(0, 0, 1, 1));
        assertThat(Edits.addMark("gone", mark).apply(STUDY)).isEqualTo(STUDY);
    }

    @Test
    void unknownFieldsStayThroughEdits() {
        Study study = STUDY.withMore(Map.of("weather", "still"));
        assertThat(Edits.choose("t2").apply(study).more()).containsEntry("weather", "still");
    }
}
