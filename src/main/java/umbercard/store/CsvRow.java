package umbercard.store;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import umbercard.model.Keyed;
import umbercard.words.Message;

/** The cells of one line of a table, asked for by column. Every method throws {@link Wrong}, which names the column. */
final class CsvRow {
    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(?:[0-9]{1,40}(?:[.,][0-9]{0,40})?|[.,][0-9]{1,40})(?:[eE][+-]?[0-9]{1,3})?");

    /** How the numbers of a table are written. */
    static final class Decimals {
        private boolean points;
        private boolean commas;

        private void saw(String number) {
            points |= number.indexOf('.') >= 0;
            commas |= number.indexOf(',') >= 0;
        }

        /** 0 for points or none, 1 for commas, 2 for both. */
        int kind() {
            return commas ? points ? 2 : 1 : 0;
        }
    }

    private final CsvHeader header;
    private final List<String> cells;
    private final Decimals decimals;

    CsvRow(CsvHeader header, List<String> cells, Decimals decimals) {
        this.header = header;
        this.cells = cells;
        this.decimals = decimals;
        boolean longer = cells.stream().skip(header.width()).anyMatch(cell -> !cell.isBlank());
        if (longer) {
            throw new Wrong("", Message.of("store.wanted.fewer-cells", cells.size(), header.width()));
        }
    }

    /** The cell; empty where it is blank or not there. */
    Optional<String> text(CsvColumn column) {
        return header.place(column).flatMap(this::cell);
    }

    private Optional<String> cell(int place) {
        return place < cells.size() ? Optional.of(cells.get(place)).filter(cell -> !cell.isBlank()) : Optional.empty();
    }

    double number(CsvColumn column, Range range) {
        String written = text(column)
                .orElseThrow(() -> wrong(column, "store.wanted.present"))
                .strip()
                .replace('\u2212', '-');
        if (!NUMBER.matcher(written).matches()) {
            throw wrong(column, "store.wanted.written-number", written);
        }
        decimals.saw(written);
        double number = Double.parseDouble(written.replace(',', '.'));
        if (!range.has(number)) {
            throw new Wrong(column.title(), range.wanted());
        }
        return number;
    }

    <E extends Enum<E> & Keyed> Optional<E> choice(CsvColumn column, Class<E> list) {
        return choice(column, list, Fields.keys(list));
    }

    /**
     * A choice by its key; spaces count as hyphens, and either case will do.
     *
     * @param offered what there is to choose from, for the words about one that there is not
     */
    <E extends Enum<E> & Keyed> Optional<E> choice(CsvColumn column, Class<E> list, String offered) {
        return text(column)
                .map(written -> Keyed.find(list, key(written))
                        .orElseThrow(() -> wrong(column, "store.wanted.choice", offered, written)));
    }

    static String key(String written) {
        return written.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", "-");
    }

    /** The cells of the columns that mean nothing here, those that are blank left out. */
    Map<String, Object> others() {
        Map<String, Object> others = new TreeMap<>();
        header.others().forEach((name, place) -> cell(place).ifPresent(cell -> others.put(name, cell)));
        return others;
    }

    List<CsvColor> colors() {
        return header.colors();
    }

    static Wrong wrong(CsvColumn column, String problem, Object... arguments) {
        return new Wrong(column.title(), Message.of(problem, arguments));
    }
}
