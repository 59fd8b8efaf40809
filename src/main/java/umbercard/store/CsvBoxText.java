package umbercard.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.QuoteMode;
import umbercard.color.Lab;
import umbercard.model.Box;
import umbercard.model.Keyed;
import umbercard.model.Stick;
import umbercard.words.Message;

/**
 * A box as a table (RFC 4180, lines end in CR LF). Colors are written as they are kept, {@code L,a,b} under D65 in the
 * fewest digits that are read back as the same, so that nothing is lost. A table has room for the sticks and their texts
 * alone: the rest of the box is told by {@link #left}.
 */
final class CsvBoxText {
    private static final List<CsvColumn> COLUMNS = List.of(
            CsvColumn.NAME,
            CsvColumn.PLACE,
            CsvColumn.L,
            CsvColumn.A,
            CsvColumn.B,
            CsvColumn.WHITE,
            CsvColumn.HARDNESS,
            CsvColumn.OWNED,
            CsvColumn.NOTE,
            CsvColumn.ID);

    private static final CSVFormat QUOTED =
            CSVFormat.RFC4180.builder().setQuoteMode(QuoteMode.ALL).get();

    private CsvBoxText() {}

    /** The text of a table; the same for equal boxes. */
    static String text(Box box) {
        Set<String> others = new TreeSet<>();
        box.sticks()
                .forEach(stick -> stick.more().forEach((name, value) -> {
                    if (fits(name, value)) {
                        others.add(name);
                    }
                }));
        StringBuilder text = new StringBuilder();
        try {
            print(
                    text,
                    Stream.concat(COLUMNS.stream().map(CsvColumn::title), others.stream())
                            .toList());
            for (Stick stick : box.sticks()) {
                print(text, cells(stick, others));
            }
        } catch (IOException defect) {
            throw new UncheckedIOException(defect);
        }
        return text.toString();
    }

    /** Spaces of any kind round a cell are passed over where they are read outside of quotes. */
    private static void print(StringBuilder text, List<String> cells) throws IOException {
        boolean spaced = cells.stream().anyMatch(cell -> !cell.equals(cell.strip()));
        (spaced ? QUOTED : CSVFormat.RFC4180).printRecord(text, cells.toArray());
    }

    private static List<String> cells(Stick stick, Set<String> others) {
        Lab color = stick.color();
        List<String> cells = new ArrayList<>(List.of(
                stick.name().orElse(""),
                stick.slot().map(Stick.Slot::label).orElse(""),
                number(color.l()),
                number(color.a()),
                number(color.b()),
                CsvColors.KEPT.name(),
                stick.hardness().map(Keyed::key).orElse(""),
                CsvStick.owned(stick.state()),
                stick.note(),
                stick.id()));
        for (String name : others) {
            Object value = stick.more().getOrDefault(name, "");
            cells.add(fits(name, value) ? value.toString() : "");
        }
        return cells;
    }

    private static String number(double number) {
        return Json.written(Json.number(number).decimalValue());
    }

    /** Whether a field that this version does not know comes back from a table as it was. */
    private static boolean fits(String name, Object value) {
        return value instanceof String text && !text.isBlank() && CsvHeader.isOther(name);
    }

    /** What a table of that file name has no room for: a sentence, or nothing. */
    static Optional<Message> left(Box box, String fileName) {
        Set<String> left = new TreeSet<>();
        String name = CsvTable.name(fileName);
        if (!box.name().equals(name)) {
            left.add("name");
        }
        if (!box.id().equals(CsvTable.id(name))) {
            left.add("id");
        }
        left.addAll(box.more().keySet());
        for (Stick stick : box.sticks()) {
            for (Map.Entry<String, Object> field : stick.more().entrySet()) {
                if (!fits(field.getKey(), field.getValue())) {
                    left.add("sticks, " + field.getKey());
                }
            }
        }
        return left.isEmpty()
                ? Optional.empty()
                : Optional.of(Message.of("store.csv.left", fileName, String.join("; ", left), left.size()));
    }
}
