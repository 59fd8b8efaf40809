package umbercard.desk.compare;

import java.util.List;
import java.util.Optional;
import javax.swing.table.AbstractTableModel;
import org.jspecify.annotations.Nullable;
import umbercard.door.Finding;
import umbercard.model.Thumbnail;
import umbercard.readings.Difference;
import umbercard.words.Words;

/** A row for each reading: its name, what it finds here, how that differs, and what it finds there. */
final class PairModel extends AbstractTableModel {
    static final int HERE = 1;
    static final int DIFFERENCE = 2;
    static final int THERE = 3;

    private static final List<String> COLUMNS =
            List.of("compare.reading", "compare.here", "compare.difference", "compare.there");

    private final transient Measuring measuring;
    private final List<String> readings;
    private transient Thumbnail here;
    private transient Thumbnail there;

    PairModel(Measuring measuring, Thumbnail here, Thumbnail there) {
        this.measuring = measuring;
        this.readings = measuring.readings();
        this.here = here;
        this.there = there;
    }

    void show(Thumbnail nowHere, Thumbnail nowThere) {
        here = nowHere;
        there = nowThere;
        changed();
    }

    /** Tells that findings have come in. */
    void changed() {
        if (!readings.isEmpty()) {
            fireTableRowsUpdated(0, readings.size() - 1);
        }
    }

    @Override
    public int getRowCount() {
        return readings.size();
    }

    @Override
    public int getColumnCount() {
        return COLUMNS.size();
    }

    @Override
    public String getColumnName(int column) {
        return Words.say(COLUMNS.get(column));
    }

    Optional<Finding> finding(int row, int column) {
        return measuring.of(column == HERE ? here : there, readings.get(row));
    }

    /** How the two differ; empty while one is not there yet. */
    Optional<Difference> difference(int row) {
        return finding(row, HERE)
                .flatMap(one -> finding(row, THERE).map(other -> Difference.between(readings.get(row), one, other)));
    }

    /** How many readings differ, in words. */
    String counted() {
        if (here.equals(there)) {
            return Words.say("compare.same");
        }
        if (!measuring.isDone(here) || !measuring.isDone(there)) {
            return Words.say("compare.measuring");
        }
        int differing = 0;
        for (int row = 0; row < getRowCount(); row++) {
            differing += difference(row).filter(Difference::isAny).isPresent() ? 1 : 0;
        }
        return Words.say("compare.counted", differing, getRowCount());
    }

    @Override
    @Nullable
    public Object getValueAt(int row, int column) {
        return switch (column) {
            case 0 -> CompareWords.name(readings.get(row));
            case DIFFERENCE -> difference(row).orElse(null);
            default -> finding(row, column).orElse(null);
        };
    }
}
