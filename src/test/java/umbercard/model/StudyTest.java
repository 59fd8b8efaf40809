package umbercard.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import umbercard.color.Lab;
import umbercard.geometry.Outline;

class StudyTest {
    private static final Study BARE =
            Study.begin("Hill", new Surface(12, 9, Surface.Unit.IN, 0.25, Optional.empty(), true));

    private static Stick stick(String id) {
        return new Stick(id, "Slate", new Stick.Slot(1, 1), new Lab(40, 0, -8));
    }

    private static Mark mark(String id) {
        return new Mark(id, Mark.Kind.LAY, Outline.rectangle(0, 0, 1, 1));
    }

    @Test
    void aNewIdIsTheLowestNumberThatNothingHas() {
        assertThat(BARE.newId("m")).isEqualTo("m1");
        Study study = BARE.withThumbnails(List.of(
                Thumbnail.empty("t1", "first").withMarks(List.of(mark("m1"), mark("m2"))),
                Thumbnail.empty("t3", "third").withMarks(List.of(mark("m4")))));
        assertThat(study.newId("m")).isEqualTo("m3");
        assertThat(study.newId("t")).isEqualTo("t2");
        assertThat(study.newId("z")).isEqualTo("z1");
    }

    @Test
    void aNewIdIsFreeInEveryKindOfThing() {
        Study study = BARE.withThumbnails(List.of(Thumbnail.empty("x1", "first").withMarks(List.of(mark("x2")))))
                .withZones(List.of(new Zone("x3", "sky", Zone.Plane.SKY, Zone.Distance.FAR)))
                .withNotes(List.of(ColorNote.of("x4", stick("n"))))
                .withSetOut(List.of(stick("x5")))
                .withBox(Optional.of(new Box("b", "tray", List.of(stick("x6")), Map.of())));
        assertThat(study.newId("x")).isEqualTo("x7");
    }

    @Test
    void aFreeNameIsTheBaseOrTheBaseWithTheLowestNumberFromTwo() {
        assertThat(BARE.freeName("first pass")).isEqualTo("first pass");
        Study study = BARE.withThumbnails(List.of(
                Thumbnail.empty("t1", "first pass"),
                Thumbnail.empty("t2", "first pass 2"),
                Thumbnail.empty("t3", "first pass 4"),
                Thumbnail.empty("t4", "low edge")));
        assertThat(study.freeName("first pass")).isEqualTo("first pass 3");
        assertThat(study.freeName("low edge")).isEqualTo("low edge 2");
        assertThat(study.freeName("first")).isEqualTo("first");
    }

    @Test
    void aFreeNameMayBeNumberedAnotherWay() {
        Study study = BARE.withThumbnails(List.of(Thumbnail.empty("t1", "no. 3"), Thumbnail.empty("t2", "no. 4")));
        assertThat(study.freeName(3, number -> "no. " + number)).isEqualTo("no. 5");
        assertThat(study.freeName(2, number -> "no. " + number)).isEqualTo("no. 2");
    }

    @Test
    void theChosenThumbnailIsElseTheFirst() {
        Thumbnail one = Thumbnail.empty("t1", "first");
        Thumbnail two = Thumbnail.empty("t2", "second");
        Study study = BARE.withThumbnails(List.of(one, two));
        assertThat(BARE.chosenThumbnail()).isEmpty();
        assertThat(study.chosenThumbnail()).contains(one);
        assertThat(study.withChosen(Optional.of("t2")).chosenThumbnail()).contains(two);
        assertThat(study.withChosen(Optional.of("gone")).chosenThumbnail()).contains(one);
    }

    @Test
    void listsGivenAreCopied() {
        List<Zone> zones = new ArrayList<>(List.of(new Zone("z1", "sky", Zone.Plane.SKY, Zone.Distance.FAR)));
        Study study = BARE.withZones(zones);
        zones.clear();
        assertThat(study.zone("z1")).isPresent();
        assertThat(study.zone("z2")).isEmpty();
    }

    @Test
    void aLostEdgeHasNoOrder() {
        assertThat(new LostEdge("z2", "z1")).isEqualTo(new LostEdge("z1", "z2"));
    }
}
