package umbercard.cards.faces;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import umbercard.door.Drawing;
import umbercard.geometry.Point;

/**
 * A card's figures, each a word and what belongs to it. In one row, the word over its figure, where the width allows;
 * otherwise as a table of as many columns as fit.
 */
final class Figures {
    /** A word, and the figure that belongs to it. */
    record Entry(String label, String value) {}

    private static final double GAP = 2;
    private static final double COLUMN_GAP = 4;

    /** Distances between baselines, as multiples of a line of the figures' size. */
    private static final double TABLE_LEADING = 1.05;

    private static final double ROW_LEADING = 1.1;

    private final List<Entry> entries;
    private final Style label;
    private final Style value;
    private final Setting setting;

    Figures(List<Entry> entries, Style label, Style value, Setting setting) {
        this.entries = List.copyOf(entries);
        this.label = label;
        this.value = value;
        this.setting = setting;
    }

    /** The figures as they are set into a width. */
    private record Grid(boolean row, int columns) {}

    private Optional<Grid> grid(double width) {
        if (rowWidth() <= width) {
            return Optional.of(new Grid(true, entries.size()));
        }
        for (int columns = 3; columns >= 1; columns--) {
            if (tableWidth(columns) <= width) {
                return Optional.of(new Grid(false, columns));
            }
        }
        return Optional.empty();
    }

    private double tableWidth(int columns) {
        return columns(columns).stream()
                        .mapToDouble(column -> labelWidth(column) + GAP + valueWidth(column))
                        .sum()
                + (columns - 1) * COLUMN_GAP;
    }

    /** The entries dealt out to columns, down each in turn. */
    private List<List<Entry>> columns(int columns) {
        int rows = (entries.size() + columns - 1) / columns;
        List<List<Entry>> dealt = new ArrayList<>();
        for (int start = 0; start < entries.size(); start += rows) {
            dealt.add(entries.subList(start, Math.min(entries.size(), start + rows)));
        }
        return dealt;
    }

    private double rowWidth() {
        double words = entries.stream().mapToDouble(this::columnWidth).sum();
        return words + (entries.size() - 1) * COLUMN_GAP;
    }

    private double columnWidth(Entry entry) {
        return Math.max(setting.width(entry.label(), label), setting.width(entry.value(), value));
    }

    private double labelWidth(List<Entry> column) {
        return column.stream()
                .mapToDouble(e -> setting.width(e.label(), label))
                .max()
                .orElse(0);
    }

    private double valueWidth(List<Entry> column) {
        return column.stream()
                .mapToDouble(e -> setting.width(e.value(), value))
                .max()
                .orElse(0);
    }

    /** From the top of the first capitals to the last baseline; empty if they do not fit the width. */
    Optional<Double> height(double width) {
        double capital = setting.type().capHeight(value.points());
        double line = setting.type().height(value.points());
        return grid(width).map(grid -> {
            if (grid.row()) {
                return setting.type().capHeight(label.points()) + ROW_LEADING * line;
            }
            int rows = (entries.size() + grid.columns() - 1) / grid.columns();
            return capital + (rows - 1) * TABLE_LEADING * line;
        });
    }

    /** Draws them; what does not fit the width is not drawn. */
    void draw(Drawing drawing, double left, double top, double width) {
        grid(width).ifPresent(grid -> {
            if (grid.row()) {
                drawRow(drawing, left, top, width);
            } else {
                drawTable(drawing, left, top, grid.columns());
            }
        });
    }

    private void drawRow(Drawing drawing, double left, double top, double width) {
        double gap = entries.size() < 2 ? 0 : COLUMN_GAP + (width - rowWidth()) / (entries.size() - 1);
        double words = top + setting.type().capHeight(label.points());
        double figures = words + ROW_LEADING * setting.type().height(value.points());
        double x = left;
        for (Entry entry : entries) {
            put(drawing, entry.label(), x, words, label);
            put(drawing, entry.value(), x, figures, value);
            x += columnWidth(entry) + gap;
        }
    }

    private void drawTable(Drawing drawing, double left, double top, int columns) {
        double capital = setting.type().capHeight(value.points());
        double leading = TABLE_LEADING * setting.type().height(value.points());
        double x = left;
        for (List<Entry> column : columns(columns)) {
            double tab = x + labelWidth(column) + GAP;
            double y = top + capital;
            for (Entry entry : column) {
                put(drawing, entry.label(), x, y, label);
                put(drawing, entry.value(), tab, y, value);
                y += leading;
            }
            x = tab + valueWidth(column) + COLUMN_GAP;
        }
    }

    private static void put(Drawing drawing, String words, double x, double y, Style style) {
        drawing.text(words, new Point(x, y), style.points(), style.weight(), style.ink());
    }
}
