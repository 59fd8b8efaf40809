package umbercard.store;

import java.util.Map;
import java.util.Optional;
import umbercard.color.Lab;
import umbercard.model.Stick;
import umbercard.model.Stick.Slot;
import umbercard.model.Stick.State;

/** A stick of one line of a table. */
final class CsvStick {
    /** Besides the keys of the states. */
    private static final Map<String, State> OWNED = Map.of("yes", State.OWNED, "no", State.NOT_OWNED);

    private CsvStick() {}

    /**
     * The stick; without an id of its own if the line gives none.
     *
     * @throws Wrong naming the first cell that does not hold what it should
     */
    static Stick of(CsvRow row, Lab color) {
        return new Stick(
                row.text(CsvColumn.ID).orElse(""),
                row.text(CsvColumn.NAME),
                slot(row),
                color,
                row.choice(CsvColumn.HARDNESS, Stick.Hardness.class),
                state(row),
                row.text(CsvColumn.NOTE).orElse(""),
                row.others());
    }

    /** How a state is written in a table. */
    static String owned(State state) {
        return switch (state) {
            case OWNED -> "yes";
            case WORN_OUT -> "worn out";
            case NOT_OWNED -> "no";
        };
    }

    private static State state(CsvRow row) {
        return row.text(CsvColumn.OWNED)
                .map(CsvRow::key)
                .map(OWNED::get)
                .or(() -> row.choice(CsvColumn.OWNED, State.class, "yes, no, worn out"))
                .orElse(State.OWNED);
    }

    private static Optional<Slot> slot(CsvRow row) {
        Optional<String> place = row.text(CsvColumn.PLACE);
        if (place.isPresent()) {
            return Optional.of(Slot.read(place.get())
                    .orElseThrow(() -> CsvRow.wrong(
                            CsvColumn.PLACE, "store.wanted.label", place.get().strip())));
        }
        Optional<String> line = row.text(CsvColumn.ROW);
        Optional<String> column = row.text(CsvColumn.COLUMN);
        if (line.isEmpty() && column.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Slot(
                lineOf(line.orElseThrow(() -> CsvRow.wrong(CsvColumn.ROW, "store.wanted.present"))),
                count(
                        CsvColumn.COLUMN,
                        column.orElseThrow(() -> CsvRow.wrong(CsvColumn.COLUMN, "store.wanted.present")))));
    }

    private static int lineOf(String written) {
        String line = written.strip();
        return line.matches("[a-zA-Z]") ? letter(line) : count(CsvColumn.ROW, line);
    }

    private static int letter(String letter) {
        return Character.toUpperCase(letter.charAt(0)) - 'A' + 1;
    }

    /** A whole number of 1 or more. */
    private static int count(CsvColumn column, String written) {
        String digits = written.strip();
        long count = digits.matches("[0-9]{1,10}") ? Long.parseLong(digits) : 0;
        if (count < 1 || count > Integer.MAX_VALUE) {
            throw CsvRow.wrong(column, "store.wanted.count");
        }
        return (int) count;
    }
}
