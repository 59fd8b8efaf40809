package umbercard.desk.compare;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Predicate;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.RowSorter.SortKey;
import javax.swing.SortOrder;
import javax.swing.table.TableCellRenderer;
import javax.swing.table.TableColumn;
import javax.swing.table.TableRowSorter;
import umbercard.desk.theme.Keys;
import umbercard.door.Figure;
import umbercard.door.Finding;
import umbercard.model.Thumbnail;
import umbercard.readings.Telling;
import umbercard.words.Words;

/**
 * All thumbnails of the study, a row each, a column for each reading's telling figure. A press on a heading, or Space in a
 * column, sorts by it; what has no figure stays last either way.
 */
final class AllTable extends JTable {
    private static final int ROW = 84;
    private static final int HEADING = 60;
    private static final int FIRST = 124;
    private static final int COLUMN = 63;

    private final AllModel rows;
    private final transient TableRowSorter<AllModel> sorter;

    /**
     * The table, in the order of the stack at first.
     *
     * @param chosen whether a thumbnail is the one for the painting
     * @param choose called with the thumbnail of a row when Enter is struck in it
     */
    AllTable(AllModel rows, double ratio, Predicate<Thumbnail> chosen, Consumer<Thumbnail> choose) {
        super(rows);
        this.rows = rows;
        this.sorter = new TableRowSorter<>(rows);
        setName("compare.table");
        getAccessibleContext().setAccessibleName(Words.say("compare.all.name"));
        getAccessibleContext().setAccessibleDescription(Words.say("compare.hint"));
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setAutoResizeMode(AUTO_RESIZE_SUBSEQUENT_COLUMNS);
        setRowHeight(UIScale.scale(ROW));
        getTableHeader().setReorderingAllowed(false);
        TableCellRenderer thumbnails = new ThumbnailCell(ratio, chosen);
        TableCellRenderer findings = new FindingCell(CompareWords::figure);
        for (int column = 0; column < rows.getColumnCount(); column++) {
            dress(getColumnModel().getColumn(column), column, column == 0 ? thumbnails : findings);
        }
        sorter.setSortsOnUpdates(true);
        sorter.setMaxSortKeys(1);
        setRowSorter(sorter);
        Keys.bind(this, WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, "SPACE", "sort", this::sortByFocused);
        Keys.bind(
                this,
                WHEN_ANCESTOR_OF_FOCUSED_COMPONENT,
                "ENTER",
                "choose",
                () -> selected().ifPresent(choose));
    }

    private void dress(TableColumn column, int index, TableCellRenderer cell) {
        column.setPreferredWidth(UIScale.scale(index == 0 ? FIRST : COLUMN));
        column.setMinWidth(UIScale.scale(index == 0 ? FIRST : COLUMN - 3));
        column.setCellRenderer(cell);
        column.setHeaderRenderer(this::heading);
        sorter.setComparator(index, index == 0 ? inStack() : byFigure(index));
    }

    /** The theme's own heading, its words wrapped. */
    private Component heading(JTable table, Object words, boolean selected, boolean focused, int row, int column) {
        Component heading = getTableHeader()
                .getDefaultRenderer()
                .getTableCellRendererComponent(table, "<html>" + words + "</html>", selected, focused, row, column);
        if (heading instanceof JLabel label) {
            label.setVerticalAlignment(JLabel.TOP);
        }
        if (heading instanceof JLabel label && column > 0) {
            String name = CompareWords.name(rows.reading(convertColumnIndexToModel(column)));
            label.setToolTipText(name);
            label.getAccessibleContext().setAccessibleName(name);
        }
        Dimension size = heading.getPreferredSize();
        heading.setPreferredSize(new Dimension(size.width, UIScale.scale(HEADING)));
        return heading;
    }

    private Comparator<Thumbnail> inStack() {
        List<Thumbnail> stack = new ArrayList<>();
        for (int row = 0; row < rows.getRowCount(); row++) {
            stack.add(rows.thumbnail(row));
        }
        return Comparator.comparingInt(stack::indexOf);
    }

    private Comparator<Finding> byFigure(int column) {
        return (one, other) -> {
            OptionalDouble first = figure(one);
            OptionalDouble second = figure(other);
            if (first.isEmpty() || second.isEmpty()) {
                int last = Boolean.compare(first.isEmpty(), second.isEmpty());
                return order(column) == SortOrder.DESCENDING ? -last : last;
            }
            return Double.compare(first.getAsDouble(), second.getAsDouble());
        };
    }

    private static OptionalDouble figure(Finding finding) {
        return Telling.of(finding).stream().mapToDouble(Figure::value).findFirst();
    }

    /** How the table is sorted by a column, if it is. */
    SortOrder order(int column) {
        return sorter.getSortKeys().stream()
                .filter(key -> key.getColumn() == column)
                .map(SortKey::getSortOrder)
                .findFirst()
                .orElse(SortOrder.UNSORTED);
    }

    private void sortByFocused() {
        int column = getColumnModel().getSelectionModel().getLeadSelectionIndex();
        if (column >= 0) {
            sorter.toggleSortOrder(convertColumnIndexToModel(column));
        }
    }

    /** The thumbnail of the selected row. */
    Optional<Thumbnail> selected() {
        return getSelectedRow() < 0
                ? Optional.empty()
                : Optional.of(rows.thumbnail(convertRowIndexToModel(getSelectedRow())));
    }

    /** In words, for screen readers and a line below: by what the rows are sorted; nothing in the order of the stack. */
    String sorted() {
        return sorter.getSortKeys().stream()
                .filter(key -> key.getColumn() > 0)
                .map(key -> Words.say(
                        key.getSortOrder() == SortOrder.ASCENDING ? "compare.sorted.up" : "compare.sorted.down",
                        CompareWords.name(rows.reading(key.getColumn()))))
                .findFirst()
                .orElse("");
    }

    /** Tells the listener when the order of the rows changes. */
    void onSorting(Runnable listener) {
        sorter.addRowSorterListener(event -> listener.run());
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return getParent() != null && getParent().getWidth() >= getMinimumSize().width;
    }
}
