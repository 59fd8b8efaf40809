package umbercard.desk.compare;

import com.formdev.flatlaf.util.UIScale;
import java.util.List;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.ListSelectionModel;
import javax.swing.table.TableColumnModel;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.theme.Controls;
import umbercard.model.Thumbnail;
import umbercard.words.Words;

/** Two thumbnails, one at each side, and between them what the readings find in both and how that differs. */
final class PairPage extends JPanel {
    private static final int SIDE = 172;
    private static final int LINE = 24;
    private static final int TWO_LINES = 40;

    private final PairModel rows;
    private final JTable table;
    private final Side here;
    private final Side there;
    private final JLabel counted = new JLabel();

    /** One of the two: which it is, its notan, and the sentence of the reading that is selected. */
    private static final class Side {
        final JComboBox<Thumbnail> which;
        final NotanView notan;
        final JTextArea sentence;

        Side(String name, List<Thumbnail> all, Thumbnail first, double ratio) {
            which = Controls.choice("compare." + name, all.toArray(Thumbnail[]::new), Thumbnail::name);
            which.setSelectedItem(first);
            which.getAccessibleContext().setAccessibleName(Words.say("compare." + name + ".description"));
            notan = new NotanView(first, ratio, SIDE, SIDE);
            sentence = Controls.sentence();
            sentence.setName("compare." + name + ".sentence");
        }

        Thumbnail thumbnail() {
            return which.getItemAt(which.getSelectedIndex());
        }

        void addTo(JPanel page, String cell, String key) {
            JPanel side = new JPanel(new MigLayout("insets 0, wrap 1, gapy 8", "[grow, fill]", "[][][]push"));
            side.setOpaque(false);
            side.add(new JLabel(Words.say(key)), "split 2, growx 0");
            side.add(which, "growx, wmin 0");
            side.add(notan);
            side.add(sentence, "wmin 0");
            page.add(side, cell);
        }
    }

    PairPage(List<Thumbnail> all, Thumbnail first, Thumbnail second, double ratio, Measuring measuring) {
        super(new MigLayout("insets 0, fill, gapx 14", "[172!, fill][grow, fill][172!, fill]", "[grow, fill]8[]"));
        rows = new PairModel(measuring, first, second);
        table = new JTable(rows);
        here = new Side("here", all, first, ratio);
        there = new Side("there", all, second, ratio);
        counted.setName("compare.counted");
        dress();
        here.addTo(this, "cell 0 0", "compare.here");
        add(new JScrollPane(table), "cell 1 0, wmin 0, hmin 0");
        there.addTo(this, "cell 2 0", "compare.there");
        add(counted, "cell 1 1");
        here.which.addActionListener(event -> showPair());
        there.which.addActionListener(event -> showPair());
        table.getSelectionModel().addListSelectionListener(event -> showSentences());
        if (rows.getRowCount() > 0) {
            table.setRowSelectionInterval(0, 0);
        }
        changed();
    }

    private void dress() {
        table.setName("compare.pairs");
        table.getAccessibleContext().setAccessibleName(Words.say("compare.pair.name"));
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.setRowHeight(UIScale.scale(LINE));
        table.getTableHeader().setReorderingAllowed(false);
        TableColumnModel columns = table.getColumnModel();
        columns.getColumn(PairModel.HERE).setCellRenderer(new FindingCell(CompareWords::both));
        columns.getColumn(PairModel.THERE).setCellRenderer(new FindingCell(CompareWords::both));
        columns.getColumn(PairModel.DIFFERENCE).setCellRenderer(new DifferenceCell());
        int[] widths = {160, 138, 288, 140};
        for (int column = 0; column < widths.length; column++) {
            columns.getColumn(column).setPreferredWidth(UIScale.scale(widths[column]));
        }
    }

    private void showPair() {
        here.notan.show(here.thumbnail());
        there.notan.show(there.thumbnail());
        rows.show(here.thumbnail(), there.thumbnail());
        changed();
    }

    private void showSentences() {
        here.sentence.setText(sentence(PairModel.HERE));
        there.sentence.setText(sentence(PairModel.THERE));
    }

    private String sentence(int column) {
        int row = table.getSelectedRow();
        return row < 0
                ? ""
                : rows.finding(row, column)
                        .map(finding -> Words.say(finding.sentence()))
                        .orElse("");
    }

    /** Shows findings that have come in. */
    void changed() {
        rows.changed();
        for (int row = 0; row < rows.getRowCount(); row++) {
            boolean isLong = rows.difference(row).filter(DifferenceCell::isLong).isPresent();
            table.setRowHeight(row, UIScale.scale(isLong ? TWO_LINES : LINE));
        }
        counted.setText(rows.counted());
        showSentences();
    }
}
