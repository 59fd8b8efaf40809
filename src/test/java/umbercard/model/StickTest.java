package umbercard.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import umbercard.color.Lab;

class StickTest {
    @ParameterizedTest
    @CsvSource({"1,1,A1", "6,6,F6", "3,12,C12", "26,1,Z1", "27,4,27-4"})
    void aPlaceIsALetterForTheRowAndANumberForTheColumn(int row, int column, String label) {
        assertThat(new Stick.Slot(row, column).label()).isEqualTo(label);
    }

    @Test
    void placesAreCountedFromOne() {
        assertThatThrownBy(() -> new Stick.Slot(0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Stick.Slot(1, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aStickIsCalledByItsNameElseItsPlaceElseItsId() {
        Stick stick = new Stick("s9", "Far slate", new Stick.Slot(3, 2), new Lab(61.2, -0.8, -10.4));
        assertThat(stick.title()).isEqualTo("Far slate");
        assertThat(stick.withName(Optional.empty()).title()).isEqualTo("C2");
        assertThat(stick.withName(Optional.empty()).withSlot(Optional.empty()).title())
                .isEqualTo("s9");
        assertThat(stick.state()).isEqualTo(Stick.State.OWNED);
        assertThat(stick.more()).isEqualTo(Map.of());
    }

    @ParameterizedTest
    @CsvSource({"C4, 3, 4", "c 4, 3, 4", "3-4, 3, 4", " 12 - 7 , 12, 7", "Z9, 26, 9"})
    void aPlaceIsReadFromItsLabel(String label, int row, int column) {
        assertThat(Stick.Slot.read(label)).contains(new Stick.Slot(row, column));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "C", "C0", "0-4", "34", "top left", "C4x", "1-9999999999"})
    void whatNamesNoPlaceIsNone(String label) {
        assertThat(Stick.Slot.read(label)).isEmpty();
    }

    @Property(tries = 60, seed = "3")
    void aLabelNamesItsOwnPlace(
            @ForAll @IntRange(min = 1, max = 60) int row, @ForAll @IntRange(min = 1, max = 60) int column) {
        Stick.Slot slot = new Stick.Slot(row, column);
        assertThat(Stick.Slot.read(slot.label())).contains(slot);
    }
}
