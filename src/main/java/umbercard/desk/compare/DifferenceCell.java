package umbercard.desk.compare;

import java.awt.Component;
import javax.swing.JTable;
import javax.swing.table.DefaultTableCellRenderer;
import umbercard.desk.theme.Theme;
import umbercard.readings.Difference;
import umbercard.words.Words;

/** What differs, in heavier type than that nothing does. */
final class DifferenceCell extends DefaultTableCellRenderer {
    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean selected, boolean focused, int row, int column) {
        super.getTableCellRendererComponent(table, "", selected, focused, row, column);
        if (value instanceof Difference difference) {
            setText(Words.say(difference.said()));
            setToolTipText(getText());
            setFont(Theme.font(difference.isAny() ? "semibold.font" : "defaultFont"));
        } else {
            setText("");
            setToolTipText(null);
        }
        return this;
    }
}
