package umbercard.store;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import umbercard.words.Message;
import umbercard.words.Trouble;

/** What the first line of a table says of its columns. */
final class CsvHeader {
    /** Fields of a stick that a column of the same name would be taken for when it is saved. */
    private static final Set<String> FIELDS = Set.of("lab", "slot", "state");

    private final int width;
    private final Map<CsvColumn, Integer> known = new EnumMap<>(CsvColumn.class);
    private final Map<String, Integer> others = new TreeMap<>();
    private final List<String> passedOver = new ArrayList<>();
    private final List<CsvColor> colors;

    /**
     * Reads the first line.
     *
     * @throws Trouble if no kind of color is complete, or a column that means something is there twice
     */
    CsvHeader(List<String> titles, String fileName) throws Trouble {
        width = titles.size();
        for (int i = 0; i < width; i++) {
            String title = titles.get(i).strip();
            Optional<CsvColumn> column = CsvColumn.named(title);
            if (column.isPresent()) {
                if (known.putIfAbsent(column.get(), i) != null) {
                    throw new Trouble(Message.of("store.csv.twice", fileName, title));
                }
            } else if (!isOther(title) || others.putIfAbsent(title, i) != null) {
                passedOver.add(title.isEmpty() ? Integer.toString(i + 1) : title);
            }
        }
        colors = Stream.of(CsvColor.values())
                .filter(color -> known.keySet().containsAll(color.columns()))
                .toList();
        if (colors.isEmpty()) {
            throw new Trouble(noColor(titles, fileName));
        }
        dropHalves();
    }

    /** Whether a column of that name means nothing here and can be kept under it. */
    static boolean isOther(String title) {
        return !title.isBlank()
                && title.equals(title.strip())
                && title.indexOf('\0') < 0
                && !FIELDS.contains(title)
                && CsvColumn.named(title).isEmpty();
    }

    private Message noColor(List<String> titles, String fileName) {
        for (CsvColor color : CsvColor.values()) {
            List<String> missing = color.columns().stream()
                    .filter(column -> !known.containsKey(column))
                    .map(CsvColumn::title)
                    .toList();
            if (missing.size() < color.columns().size()) {
                return Message.of("store.csv.half", fileName, color.title(), String.join(", ", missing));
            }
        }
        return Message.of("store.csv.no-color", fileName, String.join(", ", titles));
    }

    /** Columns of a kind of color that is not complete say nothing. */
    private void dropHalves() {
        for (CsvColor color : CsvColor.values()) {
            if (!colors.contains(color)) {
                color.columns().stream()
                        .filter(column -> known.remove(column) != null)
                        .forEach(column -> passedOver.add(column.title()));
            }
        }
    }

    int width() {
        return width;
    }

    boolean has(CsvColumn column) {
        return known.containsKey(column);
    }

    /** The kinds of color that are complete, the one that goes first in front. */
    List<CsvColor> colors() {
        return colors;
    }

    Optional<Integer> place(CsvColumn column) {
        return Optional.ofNullable(known.get(column));
    }

    /** The columns that mean nothing here, by name. */
    Map<String, Integer> others() {
        return others;
    }

    /** What is to be told of the columns. */
    List<Message> remarks() {
        List<Message> remarks = new ArrayList<>();
        if (colors.size() > 1) {
            remarks.add(Message.of(
                    "store.csv.several-colors",
                    colors.stream().map(CsvColor::title).collect(Collectors.joining(" · "))));
        }
        if (has(CsvColumn.PLACE) && (has(CsvColumn.ROW) || has(CsvColumn.COLUMN))) {
            remarks.add(Message.of("store.csv.several-places"));
        }
        if (!others.isEmpty()) {
            remarks.add(Message.of("store.csv.others", String.join(", ", others.keySet()), others.size()));
        }
        if (!passedOver.isEmpty()) {
            remarks.add(Message.of("store.csv.passed-over", String.join(", ", passedOver), passedOver.size()));
        }
        return remarks;
    }
}
