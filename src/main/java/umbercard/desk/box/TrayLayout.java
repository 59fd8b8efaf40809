package umbercard.desk.box;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import umbercard.model.Stick;
import umbercard.words.Words;

/**
 * Where the sticks of a box lie while one is picked: cells of a grid, no two sticks in one.
 *
 * @param labels what stands before each row
 */
record TrayLayout(List<Cell> cells, List<String> labels, int columns) {

    /** A stick in its cell, row and column counted from 0. */
    record Cell(Stick stick, int row, int column) {}

    /** Below this C*ab a stick is a gray (common practice, no source). */
    private static final double NEUTRAL = 5;

    /** Where the circle of hues is cut open: between violet and red. */
    private static final double CUT = 345;

    TrayLayout {
        cells = List.copyOf(cells);
        labels = List.copyOf(labels);
    }

    /** The sticks by their places in the tray; those without a place, or whose place is taken, follow in rows below. */
    static TrayLayout asTheyLie(List<Stick> sticks, int mostColumns) {
        Map<Stick.Slot, Stick> placed = new HashMap<>();
        List<Stick> loose = new ArrayList<>();
        for (Stick stick : sticks) {
            if (stick.slot().isEmpty() || placed.putIfAbsent(stick.slot().get(), stick) != null) {
                loose.add(stick);
            }
        }
        int rows = placed.keySet().stream().mapToInt(Stick.Slot::row).max().orElse(0);
        int columns =
                placed.keySet().stream().mapToInt(Stick.Slot::column).max().orElse(0);
        List<Cell> cells = new ArrayList<>();
        placed.forEach((slot, stick) -> cells.add(new Cell(stick, slot.row() - 1, slot.column() - 1)));
        cells.sort(Comparator.comparingInt(Cell::row).thenComparingInt(Cell::column));
        int wide = Math.max(columns, Math.min(loose.size(), mostColumns));
        for (int i = 0; i < loose.size(); i++) {
            cells.add(new Cell(loose.get(i), rows + i / wide, i % wide));
        }
        return new TrayLayout(cells, trayLabels(rows, cells), Math.max(1, wide));
    }

    private static List<String> trayLabels(int rows, List<Cell> cells) {
        int all = cells.stream().mapToInt(cell -> cell.row() + 1).max().orElse(0);
        List<String> labels = new ArrayList<>();
        for (int row = 1; row <= all; row++) {
            String first = new Stick.Slot(row, 1).label();
            labels.add(row > rows ? "" : row <= 26 ? first.substring(0, 1) : Integer.toString(row));
        }
        return labels;
    }

    /** Dark to light, in as few rows as hold them. */
    static TrayLayout inRows(List<Stick> sticks, int mostColumns) {
        List<Stick> sorted = sticks.stream()
                .sorted(Comparator.comparingDouble(
                        (Stick stick) -> stick.color().value()))
                .toList();
        List<Cell> cells = new ArrayList<>();
        List<String> labels = new ArrayList<>();
        for (int i = 0; i < sorted.size(); i++) {
            cells.add(new Cell(sorted.get(i), i / mostColumns, i % mostColumns));
            if (i % mostColumns == 0) {
                labels.add("");
            }
        }
        return new TrayLayout(cells, labels, Math.max(1, Math.min(mostColumns, sorted.size())));
    }

    /**
     * Light at the top to dark at the bottom, a whole number of the painter's own a band; grays at the left, then the hues from red round to
     * violet. A band too full for one row takes several.
     *
     * @param mostColumns 2 or more
     */
    static TrayLayout byValue(List<Stick> sticks, int mostColumns) {
        List<List<Stick>> rows = new ArrayList<>();
        List<String> labels = new ArrayList<>();
        List<Double> marks = Words.values().marks();
        for (int band = marks.size() - 1; band >= 0; band--) {
            List<Stick> within = band(sticks, band, marks.size() - 1);
            int parts = (within.size() + mostColumns - 1) / mostColumns;
            for (int part = 0; part < parts; part++) {
                rows.add(within.subList(part * within.size() / parts, (part + 1) * within.size() / parts));
                labels.add(part == 0 ? StickWords.mark(marks.get(band)) : "");
            }
        }
        int longest = rows.stream().mapToInt(List::size).max().orElse(1);
        int columns = Math.min(mostColumns, Math.max(longest, Math.min(8, sticks.size())));
        Map<Stick, Integer> wanted = wantedColumns(sticks, columns);
        List<Cell> cells = new ArrayList<>();
        for (int row = 0; row < rows.size(); row++) {
            cells.addAll(spread(rows.get(row), row, wanted, columns));
        }
        return new TrayLayout(cells, labels, columns);
    }

    private static List<Stick> band(List<Stick> sticks, int band, int last) {
        return sticks.stream()
                .filter(stick -> Math.round(stick.color().value() / 10 * last) == band)
                .sorted(Comparator.comparingDouble(
                        (Stick stick) -> -stick.color().value()))
                .toList();
    }

    private static double hueKey(Stick stick) {
        return stick.color().chroma() < NEUTRAL ? -1 : (stick.color().hue() - CUT + 360) % 360;
    }

    /** The column each stick would have if the whole box lay in one row: by rank, so that crowded hues spread out. */
    private static Map<Stick, Integer> wantedColumns(List<Stick> sticks, int columns) {
        List<Stick> colored = sticks.stream()
                .filter(stick -> hueKey(stick) >= 0)
                .sorted(Comparator.comparingDouble(TrayLayout::hueKey))
                .toList();
        Map<Stick, Integer> wanted = new HashMap<>();
        for (int i = 0; i < colored.size(); i++) {
            wanted.put(colored.get(i), 1 + i * (columns - 1) / colored.size());
        }
        return wanted;
    }

    /** One row in the order of hue, each stick as near to its wanted column as the others let it. */
    private static List<Cell> spread(List<Stick> row, int number, Map<Stick, Integer> wanted, int columns) {
        List<Stick> sorted = row.stream()
                .sorted(Comparator.comparingDouble(TrayLayout::hueKey))
                .toList();
        int[] column = new int[sorted.size()];
        int free = 0;
        for (int i = 0; i < sorted.size(); i++) {
            column[i] = Math.max(free, wanted.getOrDefault(sorted.get(i), 0));
            free = column[i] + 1;
        }
        int last = columns - 1;
        for (int i = sorted.size() - 1; i >= 0; i--) {
            column[i] = Math.min(column[i], last);
            last = column[i] - 1;
        }
        List<Cell> cells = new ArrayList<>();
        for (int i = 0; i < sorted.size(); i++) {
            cells.add(new Cell(sorted.get(i), number, column[i]));
        }
        return cells;
    }

    int rows() {
        return labels.size();
    }

    /**
     * The cell that an arrow key leads to: the next one in the row, or the nearest one in the next row that has any; empty at
     * the edge.
     */
    Optional<Cell> next(Cell from, int right, int down) {
        if (down != 0) {
            return cells.stream()
                    .filter(cell -> (cell.row() - from.row()) * down > 0)
                    .min(Comparator.comparingInt((Cell cell) -> Math.abs(cell.row() - from.row()))
                            .thenComparingInt(cell -> Math.abs(cell.column() - from.column())));
        }
        return cells.stream()
                .filter(cell -> cell.row() == from.row() && (cell.column() - from.column()) * right > 0)
                .min(Comparator.comparingInt(cell -> Math.abs(cell.column() - from.column())));
    }
}
