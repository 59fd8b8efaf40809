package umbercard.desk.notes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import umbercard.desk.KilnHill;
import umbercard.door.Edit;
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
        Study after =
                NoteEdits.newZone(study.notes().subList(3, 4), pond).change().apply(study);

        assertThat(after.zones()).hasSize(4).endsWith(pond);
        assertThat(after.notes().get(3).zone()).contains("z4");
        assertThat(after.notes().subList(0, 3)).isEqualTo(study.notes().subList(0, 3));
    }

    @Test
    void stripsAreAddedTogetherAndTheirSticksSetOut() {
        List<ColorNote> two = List.of(ColorNote.of("n8", stick), ColorNote.of("n9", stick));
        Study after = NoteEdits.add(two).change().apply(study);
        assertThat(after.notes().subList(4, 6)).isEqualTo(two);
        assertThat(after.setOut()).contains(stick);
    }

    @Test
    void severalStripsAreChangedAtOnce() {
        Study after = NoteEdits.change(study.notes().subList(1, 3), "layer", note -> note.withLayer(2))
                .change()
                .apply(study);
        assertThat(after.notes()).extracting(ColorNote::layer).containsExactly(1, 2, 2, 1);
    }

    @Test
    void stripsAreKeptInPlaceUntilAllAreAndThenLetGo() {
        Study one = NoteEdits.turnPinned(study.notes().subList(0, 1)).change().apply(study);
        assertThat(one.notes()).extracting(ColorNote::pinned).containsExactly(true, false, false, false);
        Study two = NoteEdits.turnPinned(one.notes().subList(0, 2)).change().apply(one);
        assertThat(two.notes()).extracting(ColorNote::pinned).containsExactly(true, true, false, false);
        Edit letGo = NoteEdits.turnPinned(two.notes().subList(0, 2));
        assertThat(letGo.change().apply(two).notes()).noneMatch(ColorNote::pinned);
        assertThat(Words.say(letGo.name())).isEqualTo("let go of 2 strips");
    }

    @Test
    void arrangingTakesOverTheOrderAndTheRulesPassedOver() {
        List<ColorNote> turned = List.of(
                study.notes().get(3),
                study.notes().get(2),
                study.notes().get(1),
                study.notes().get(0));
        Study after = NoteEdits.arrange(turned, Set.of("dust")).change().apply(study);
        assertThat(after.notes()).isEqualTo(turned);
        assertThat(after.rulesOff()).containsExactly("dust");
    }

    @Test
    void everyEditHasAName() {
        List<ColorNote> one = study.notes().subList(0, 1);
        List<ColorNote> three = study.notes().subList(0, 3);
        for (String choice : new String[] {"zone", "purpose", "direction", "touch", "layer", "words"}) {
            assertThat(name(NoteEdits.change(one, choice, n -> n)))
                    .startsWith("change ")
                    .endsWith(" of Sloe");
        }
        assertThat(name(NoteEdits.add("n9", stick, Optional.empty(), Optional.empty())))
                .isEqualTo("add " + stick.title());
        assertThat(name(NoteEdits.add(three))).isEqualTo("add 3 strips");
        assertThat(name(NoteEdits.remove(one))).isEqualTo("remove Sloe");
        assertThat(name(NoteEdits.move(three, 2))).isEqualTo("move 3 strips");
        assertThat(name(NoteEdits.earlier(one))).isEqualTo("move Sloe");
        assertThat(name(NoteEdits.later(one))).isEqualTo("move Sloe");
        assertThat(name(NoteEdits.duplicate(one))).isEqualTo("duplicate Sloe");
        assertThat(name(NoteEdits.turnPinned(one))).isEqualTo("keep Sloe in place");
        ColorNote second = study.notes().get(1);
        assertThat(name(NoteEdits.turnBreak(second))).isEqualTo("break before Peat");
        assertThat(name(NoteEdits.turnBreak(second.withBreakBefore(true)))).isEqualTo("no break before Peat");
        assertThat(name(NoteEdits.arrange(three, Set.of()))).isEqualTo("arrange the card");
    }

    private static String name(Edit edit) {
        return Words.say(edit.name());
    }
}
