package umbercard.desk.compare;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.Icon;
import javax.swing.JTable;
import javax.swing.table.DefaultTableCellRenderer;
import umbercard.desk.ledger.VerdictShape;
import umbercard.desk.theme.Theme;
import umbercard.door.Finding;
import umbercard.door.Finding.Verdict;
import umbercard.words.Words;

/** A finding in a cell: the verdict's sign, and words; three dots while it is measured. */
final class FindingCell extends DefaultTableCellRenderer {
    private static final int SIGN = 14;

    private final transient Function<Finding, String> words;

    /** Says of a finding what {@code words} does; a screen reader says figure and verdict. */
    FindingCell(Function<Finding, String> words) {
        this.words = words;
    }

    private record Sign(Verdict verdict, Component cell) implements Icon {
        @Override
        public void paintIcon(Component c, Graphics g, int x, int y) {
            Graphics2D smooth = Theme.smooth(g);
            smooth.setColor(cell.getForeground());
            VerdictShape.paint(smooth, Optional.of(verdict), x + getIconWidth() / 2f - 1, y + getIconHeight() / 2f);
            smooth.dispose();
        }

        @Override
        public int getIconWidth() {
            return UIScale.scale(SIGN);
        }

        @Override
        public int getIconHeight() {
            return UIScale.scale(SIGN);
        }
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean selected, boolean focused, int row, int column) {
        super.getTableCellRendererComponent(table, "", selected, focused, row, column);
        if (value instanceof Finding finding) {
            setFont(Theme.font(finding.verdict() == Verdict.LOOK_AGAIN ? "semibold.font" : "defaultFont"));
            setIcon(new Sign(finding.verdict(), this));
            setText(words.apply(finding));
            setToolTipText(Words.say(finding.sentence()));
            getAccessibleContext()
                    .setAccessibleName(
                            Words.say("compare.spoken", table.getColumnName(column), CompareWords.both(finding)));
        } else {
            setIcon(null);
            setText("…");
            setToolTipText(null);
            getAccessibleContext().setAccessibleName(Words.say("compare.measuring"));
        }
        return this;
    }
}
