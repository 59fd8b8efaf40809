package umbercard.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import picocli.CommandLine.TypeConversionException;
import umbercard.model.Surface;
import umbercard.model.Surface.Unit;

/** {@link SheetSize}, {@link Tape}, {@link Share}, {@link MunsellNumber} and {@link Count} as they are written in a call. */
class WrittenTest {

    @ParameterizedTest(name = "{0} {1}")
    @CsvFileSource(resources = "written.csv", numLinesToSkip = 1)
    void isReadOrRefused(String kind, String written, String reading) {
        String given = written == null ? "" : written;
        if (reading == null) {
            assertThatThrownBy(() -> read(kind, given))
                    .isInstanceOf(TypeConversionException.class)
                    .hasMessageStartingWith("\"" + given + "\" is not a ");
        } else {
            assertThat(read(kind, given)).isEqualTo(reading);
        }
    }

    private static String read(String kind, String written) {
        return switch (kind) {
            case "sheet" -> {
                SheetSize sheet = SheetSize.parse(written);
                yield sheet.width() + " x " + sheet.height() + " " + sheet.unit();
            }
            case "tape" ->
                Tape.parse(written).width() + " " + Tape.parse(written).unit();
            case "share" -> Double.toString(Share.parse(written).of());
            case "value" -> Double.toString(MunsellNumber.parse(written).value());
            case "count" -> Integer.toString(Count.parse(written).of());
            default -> throw new AssertionError("no such kind: " + kind);
        };
    }

    /** An inch is exactly 25.4 mm. */
    @Test
    void tapeInTheOtherUnitIsMeasuredInTheSheets() {
        Surface surface = new SheetSize(30, 40, Unit.CM).surface(new Tape(0.5, Unit.IN));
        assertThat(surface.unit()).isEqualTo(Unit.CM);
        assertThat(surface.tape()).isEqualTo(1.27, within(1e-12));
    }

    @Test
    void tapeThatLeavesNothingIsAWrongCall() {
        assertThatThrownBy(() -> new SheetSize(9, 12, Unit.IN).surface(new Tape(4.5, Unit.IN)))
                .isInstanceOf(WrongCall.class);
    }
}
