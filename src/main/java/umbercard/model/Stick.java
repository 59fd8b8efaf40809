package umbercard.model;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import umbercard.color.Lab;

/**
 * One pastel with its color, its place in the tray and, if it still has one, its name.
 *
 * @param note the painter's words about it, or empty
 */
@RecordBuilder
public record Stick(
        String id,
        Optional<String> name,
        Optional<Slot> slot,
        Lab color,
        Optional<Hardness> hardness,
        State state,
        String note,
        Map<String, Object> more)
        implements StickBuilder.With {

    /** A place in the tray: row and column, both counted from 1 at the upper left. */
    public record Slot(int row, int column) {
        private static final Pattern LABEL = Pattern.compile("(?:([a-zA-Z])|(\\d{1,9})\\s*-)\\s*(\\d{1,9})");

        public Slot {
            if (row < 1 || column < 1) {
                throw new IllegalArgumentException("rows and columns are counted from 1: " + row + ", " + column);
            }
        }

        /** The place that a label names, {@code C4} or {@code 3-4}, in capitals or not; empty if it names none. */
        public static Optional<Slot> read(String label) {
            Matcher matcher = LABEL.matcher(label.strip());
            if (!matcher.matches()) {
                return Optional.empty();
            }
            String letter = matcher.group(1);
            int row = letter == null
                    ? Integer.parseInt(matcher.group(2))
                    : Character.toUpperCase(letter.charAt(0)) - 'A' + 1;
            int column = Integer.parseInt(matcher.group(3));
            return row < 1 || column < 1 ? Optional.empty() : Optional.of(new Slot(row, column));
        }

        /** The way a tray is read aloud: a letter for the row, a number for the column; rows past Z as numbers. */
        public String label() {
            return row <= 26 ? "" + (char) ('A' + row - 1) + column : row + "-" + column;
        }
    }

    /** Which sticks go first within one zone: hard before soft. */
    public enum Hardness implements Keyed {
        HARD,
        MEDIUM,
        SOFT
    }

    /** Whether the painter has it at hand. */
    public enum State implements Keyed {
        OWNED,
        WORN_OUT,
        NOT_OWNED
    }

    public Stick {
        more = More.copyOf(more);
    }

    public Stick(String id, String name, Slot slot, Lab color) {
        this(id, Optional.of(name), Optional.of(slot), color, Optional.empty(), State.OWNED, "", Map.of());
    }

    /** What to call it: its name, else its place in the tray, else its id. */
    public String title() {
        return name.orElseGet(() -> slot.map(Slot::label).orElse(id));
    }
}
