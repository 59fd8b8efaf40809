package umbercard.desk.compare;

import java.util.List;
import java.util.Optional;
import javax.swing.table.AbstractTableModel;
import org.jspecify.annotations.Nullable;
import umbercard.door.Finding;
import umbercard.model.Thumbnail;
import umbercard.words.Words;

/** A row for each thumbnail: itself, and what each reading finds in it. */
final class AllModel extends AbstractTableModel {
    private final transient List<Thumbnail> thumbnails;
    private final transient Measuring measuring;
    private final List<String> readings;

    AllModel(List<Thumbnail> thumbnails, Measuring measuring) {
        this.thumbnails = thumbnails;
        this.measuring = measuring;
        this.readings = measuring.readings();
    }

    Thumbnail thumbnail(int row) {
        return thumbnails.get(row);
    }

    /** The reading of a column but the first. */
    String reading(int column) {
        return readings.get(column - 1);
    }

    @Override
    public int getRowCount() {
        return thumbnails.size();
    }

    @Override
    public int getColumnCount() {
        return 1 + readings.size();
    }

    @Override
    public String getColumnName(int column) {
        return column == 0 ? Words.say("compare.thumbnail") : CompareWords.column(reading(column));
    }

    Optional<Finding> finding(int row, int column) {
        return measuring.of(thumbnails.get(row), reading(column));
    }

    @Override
    @Nullable
    public Object getValueAt(int row, int column) {
        return column == 0 ? thumbnails.get(row) : finding(row, column).orElse(null);
    }

    /** Tells that findings have come in. */
    void changed() {
        fireTableRowsUpdated(0, thumbnails.size() - 1);
    }
}
