package umbercard.desk.notes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import umbercard.color.Lab;
import umbercard.desk.KilnHill;
import umbercard.desk.box.StickWords;
import umbercard.model.ColorNote;
import umbercard.model.Stick;
import umbercard.model.Study;

class StripWordsTest {
    private final Study study = KilnHill.study();

    @Test
    void aStickIsItsPlaceAndItsName() {
        Stick stick = new Stick("s", "Far slate", new Stick.Slot(3, 2), new Lab(61, 0, 0));
        assertThat(StickWords.stick(stick)).isEqualTo("C2  Far slate");
        assertThat(StickWords.stick(stick.withName(Optional.empty()))).isEqualTo("C2");
        assertThat(StickWords.stick(stick.withSlot(Optional.empty()))).isEqualTo("Far slate");
    }

    @Test
    void aUseIsZonePurposeDirectionAndTouch() {
        assertThat(StripWords.use(study, study.notes().get(2))).isEqualTo("ridge · land edge · flat · firm");
    }

    @Test
    void whatIsNotSetIsLeftOut() {
        ColorNote note = ColorNote.of("n", study.notes().get(0).stick());
        assertThat(StripWords.use(study, note)).isEqualTo("flat · firm");
        assertThat(StripWords.use(study, note.withZone(Optional.of("gone")))).isEqualTo("flat · firm");
    }

    @Test
    void aScreenReaderSaysTheWholeStrip() {
        assertThat(StripWords.spoken(study, study.notes().get(1), 2))
                .isEqualTo("2. A2  Peat, value 2.1: slope shadow, darks, slanting left, firm");
    }

    @Test
    void aLaterLayerAndAPlaceThatIsKeptAreTold() {
        ColorNote note = study.notes().get(2).withLayer(2).withPinned(true);
        assertThat(StripWords.use(study, note)).isEqualTo("ridge · land edge · flat · firm · layer 2 · kept in place");
    }

    @Test
    void aScreenReaderSaysTheBreakAndThePaintersOwnWords() {
        ColorNote note = study.notes().get(1).withBreakBefore(true).withWords("drag it sideways");
        assertThat(StripWords.spoken(study, note, 2))
                .isEqualTo("next session. 2. A2  Peat, value 2.1: slope shadow, darks, slanting left, firm."
                        + " drag it sideways");
        assertThat(StripWords.spoken(study, note, 1)).startsWith("1. A2");
    }
}
