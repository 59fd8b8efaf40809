package umbercard.desk.compare;

import java.awt.Component;
import java.util.function.Predicate;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableCellRenderer;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.theme.Theme;
import umbercard.model.Thumbnail;
import umbercard.words.Words;

/** A thumbnail in a cell: a small notan over its name, and whether it is chosen. */
final class ThumbnailCell implements TableCellRenderer {
    private static final int WIDE = 80;
    private static final int HIGH = 54;

    private final NotanView notan;
    private final Predicate<Thumbnail> chosen;
    private final DefaultTableCellRenderer name = new DefaultTableCellRenderer();
    private final JPanel cell = new JPanel(new MigLayout("insets 3 6 3 4, wrap 1, gap 2", "[grow, fill]", "[][]"));

    ThumbnailCell(double ratio, Predicate<Thumbnail> chosen) {
        this.chosen = chosen;
        notan = new NotanView(Thumbnail.empty("", ""), ratio, WIDE, HIGH);
        cell.add(notan, "left, growx 0");
        cell.add(name, "wmin 0");
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean selected, boolean focused, int row, int column) {
        Thumbnail thumbnail = (Thumbnail) value;
        String words = chosen.test(thumbnail)
                ? Words.say("compare.cell", thumbnail.name(), Words.say("compare.chosen"))
                : thumbnail.name();
        JLabel label = (JLabel) name.getTableCellRendererComponent(table, words, selected, focused, row, column);
        label.setFont(Theme.font("small.font"));
        notan.show(thumbnail);
        cell.setBackground(label.getBackground());
        cell.getAccessibleContext().setAccessibleName(words);
        cell.setToolTipText(words);
        return cell;
    }
}
