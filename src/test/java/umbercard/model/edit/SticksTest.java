package umbercard.model.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import umbercard.color.Lab;
import umbercard.model.Box;
import umbercard.model.ColorNote;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Surface;

class SticksTest {
    private static final List<Stick> BOX = List.of(stick("s1", 20), stick("s2", 40), stick("s3", 60), stick("s4", 80));

    private static Stick stick(String id, double l) {
        return new Stick(id, "stick " + id, new Stick.Slot(1, Integer.parseInt(id.substring(1))), new Lab(l, 0, 0));
    }

    private static Study study() {
        return Study.begin("hill", new Surface(12, 9, Surface.Unit.IN, 0.25, Optional.empty(), true))
                .withBox(Optional.of(new Box("b", "box", BOX, Map.of())));
    }

    private static Study setOut(int... places) {
        Study study = study();
        for (int place : places) {
            study = Sticks.setOut(BOX.get(place)).apply(study);
        }
        return study;
    }

    @Test
    void sticksSetOutLieInTheOrderOfTheBox() {
        assertThat(setOut(2, 0, 3).setOut()).containsExactly(BOX.get(0), BOX.get(2), BOX.get(3));
    }

    @Test
    void aStickFromAnotherBoxLiesAfterThem() {
        Stick strange = stick("s9", 50);
        assertThat(Sticks.setOut(BOX.get(1))
                        .apply(Sticks.setOut(strange).apply(study()))
                        .setOut())
                .containsExactly(BOX.get(1), strange);
    }

    @Property(tries = 50, seed = "5")
    void settingOutTwiceIsSettingOutOnceAndPuttingBackUndoesIt(
            @ForAll @Size(max = 6) List<@IntRange(max = 3) Integer> places) {
        Study out = setOut(places.stream().mapToInt(i -> i).toArray());
        assertThat(out.setOut()).doesNotHaveDuplicates().hasSize((int)
                places.stream().distinct().count());
        Study back = out;
        for (int place : places) {
            back = Sticks.putBack(BOX.get(place).id()).apply(back);
        }
        assertThat(back).isEqualTo(study());
    }

    @Test
    void whatIsPutRightIsRightEverywhere() {
        Stick better = BOX.get(1).withColor(new Lab(44, 3, 3));
        Study study = Notes.add(List.of(ColorNote.of("n1", BOX.get(1)))).apply(setOut(1, 2));
        Study now = Sticks.change(better).apply(study);
        assertThat(now.box().orElseThrow().sticks()).containsExactly(BOX.get(0), better, BOX.get(2), BOX.get(3));
        assertThat(now.setOut()).containsExactly(better, BOX.get(2));
        assertThat(now.notes().get(0).stick()).isEqualTo(better);
    }

    @Test
    void aStickTakenOutOfTheBoxStaysOnTheCard() {
        Study study = Notes.add(List.of(ColorNote.of("n1", BOX.get(1)))).apply(setOut(1, 2));
        Study now = Sticks.remove("s2").apply(study);
        assertThat(now.box().orElseThrow().sticks()).containsExactly(BOX.get(0), BOX.get(2), BOX.get(3));
        assertThat(now.setOut()).containsExactly(BOX.get(2));
        assertThat(now.notes().get(0).stick()).isEqualTo(BOX.get(1));
    }

    @Test
    void aStickIsAddedAfterTheOthersWhereThereIsABox() {
        Stick more = stick("s9", 50);
        assertThat(Sticks.add(more).apply(study()).box().orElseThrow().sticks()).endsWith(more);
        Study none = study().withBox(Optional.empty());
        assertThat(Sticks.add(more).apply(none)).isEqualTo(none);
    }

    @Test
    void settingOutOnlySomePutsAllOthersBack() {
        Study now = Sticks.setOutOnly(List.of(BOX.get(3), BOX.get(1))).apply(setOut(0, 1, 2));
        assertThat(now.setOut()).containsExactly(BOX.get(1), BOX.get(3));
        assertThat(Sticks.setOut(List.of(BOX.get(0), BOX.get(1))).apply(now).setOut())
                .containsExactly(BOX.get(0), BOX.get(1), BOX.get(3));
    }

    /** An id says nothing across boxes: without care the new box's first stick would count as set out and on the card. */
    @Test
    void sticksOfTheLastBoxAreNotTakenForThoseOfAnother() {
        Study study = Notes.add(List.of(ColorNote.of("n1", BOX.get(0)))).apply(setOut(0, 3));
        Box other = new Box(
                "b", "another", List.of(stick("s1", 70), stick("s2", 75).withId("s1-2"), stick("s9", 80)), Map.of());
        Study now = Sticks.take(other).apply(study);
        assertThat(now.box()).contains(other);
        assertThat(now.setOut()).containsExactly(BOX.get(0).withId("s1-3"), BOX.get(3));
        assertThat(now.notes().get(0).stick()).isEqualTo(BOX.get(0).withId("s1-3"));
        assertThat(Sticks.isSetOut(now, "s1")).isFalse();
    }

    @Test
    void theSameBoxReadAgainKeepsWhatIsOut() {
        Box again = new Box("b", "box", List.of(stick("s1", 22), stick("s2", 41)), Map.of());
        Study now = Sticks.take(again).apply(setOut(0));
        assertThat(now.setOut()).containsExactly(BOX.get(0));
        assertThat(Sticks.isSetOut(now, "s1")).isTrue();
    }
}
