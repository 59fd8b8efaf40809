package umbercard.desk.compare;

import java.awt.Component;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
            String said = Words.say(difference.said());
            setText(isLong(difference) ? lines(difference) : said);
            setToolTipText(said);
            getAccessibleContext().setAccessibleName(said);
            setFont(Theme.font(difference.isAny() ? "semibold.font" : "defaultFont"));
        } else {
            setText("");
            setToolTipText(null);
        }
        return this;
    }

    /** Whether it takes two lines. */
    static boolean isLong(Difference difference) {
        return difference.verdicts().isPresent() && difference.figures().isPresent();
    }

    private static String lines(Difference difference) {
        return Stream.of(difference.verdicts(), difference.figures())
                .flatMap(Optional::stream)
                .map(Words::say)
                .collect(Collectors.joining(";<br>", "<html>", "</html>"));
    }
}
