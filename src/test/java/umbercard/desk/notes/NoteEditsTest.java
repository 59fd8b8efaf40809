package umbercard.desk.notes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import umbercard.desk.KilnHill;
import umbercard.model.Box;
import umbercard.model.ColorNote;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Zone;
import umbercard.words.Words;

class NoteEditsTest {
    private final Study study = KilnHill.study();
    private final Stick stick = study.box().map(Box::sticks).orElseThrow().get(9);

    @Test
    void aNewStripComesLastAndTakesOverZoneAndPurpose() {
        ColorNote like = study.notes().get(1);
        Study after = NoteEdits.add("n9", stick, Optional.of(like), Optional.empty())
                .change()
                .apply(study);

        assertThat(after.notes()).hasSize(5).startsWith(study.notes().toArray(ColorNote[]::new));
        assertThat(after.notes().get(4))
                .isEqualTo(ColorNote.of("n9", stick).withZone(like.zone()).withPurpose("darks"));
    }

    @Test
    void withNothingToTakeOverANewStripIsPlain() {
        Study after = NoteEdits.add("n9", stick, Optional.empty(), Optional.empty())
                .change()
                .apply(study);
        assertThat(after.notes().get(4)).isEqualTo(ColorNote.of("n9", stick));
    }

    @Test
    void aStripForAZoneTakesOverThePurposeOfOneInThatZoneOnly() {
        ColorNote like = study.notes().get(1);
        Study inIt = NoteEdits.add("n9", stick, Optional.of(like), like.zone())
                .change()
                .apply(study);
        assertThat(inIt.notes().get(4))
                .isEqualTo(ColorNote.of("n9", stick).withZone(like.zone()).withPurpose("darks"));
        Study elsewhere = NoteEdits.add("n9", stick, Optional.of(like), Optional.of("z1"))
                .change()
                .apply(study);
        assertThat(elsewhere.notes().get(4)).isEqualTo(ColorNote.of("n9", stick).withZone(Optional.of("z1")));
    }

    @Test
    void aNewZoneIsAddedAndTheStripPutIntoIt() {
        Zone pond = new Zone("z4", "pond", Zone.Plane.WATER, Zone.Distance.NEAR);
        Study after = NoteEdits.newZone(study.notes().get(3), pond).change().apply(study);

        assertThat(after.zones()).hasSize(4).endsWith(pond);
        assertThat(after.notes().get(3).zone()).contains("z4");
        assertThat(after.notes().subList(0, 3)).isEqualTo(study.notes().subList(0, 3));
    }

    @Test
    void everyEditHasAName() {
        ColorNote note = study.notes().get(0);
        for (String choice : new String[] {"zone", "purpose", "direction", "touch"}) {
            assertThat(Words.say(NoteEdits.change(note, choice, n -> n).name()))
                    .startsWith("change ")
                    .endsWith(" of Sloe");
        }
        assertThat(Words.say(NoteEdits.add("n9", stick, Optional.empty(), Optional.empty())
                        .name()))
                .isEqualTo("add " + stick.title());
        assertThat(Words.say(NoteEdits.remove(note).name())).isEqualTo("remove Sloe");
        assertThat(Words.say(NoteEdits.move(note, 2).name())).isEqualTo("move Sloe");
    }
}
