package umbercard.desk.compare;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Predicate;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.theme.WordButton;
import umbercard.model.Thumbnail;
import umbercard.words.Words;

/** The table of all thumbnails, and a word that chooses the one of the selected row. */
final class AllPage extends JPanel {
    private final AllModel rows;
    private final AllTable table;
    private final transient Predicate<Thumbnail> chosen;
    private final transient Consumer<Thumbnail> choose;
    private final WordButton word = WordButton.onDesk(
            "compare.choose", Words.say("compare.choose"), Words.say("compare.choose.description"), this::choose);
    private final JLabel sorted = new JLabel();

    AllPage(
            List<Thumbnail> thumbnails,
            double ratio,
            Measuring measuring,
            Predicate<Thumbnail> chosen,
            Consumer<Thumbnail> choose) {
        super(new MigLayout("insets 0, fill, gapx 12", "[][]push[]", "[grow, fill]8[]"));
        this.chosen = chosen;
        this.choose = choose;
        rows = new AllModel(thumbnails, measuring);
        table = new AllTable(rows, ratio, chosen, thumbnail -> choose());
        sorted.setName("compare.sorted");
        add(new JScrollPane(table), "cell 0 0 3 1, grow, wmin 0, hmin 0");
        add(word, "cell 0 1");
        add(sorted, "cell 1 1");
        JLabel hint = new JLabel(Words.say("compare.hint"));
        add(hint, "cell 2 1, wmin 0");
        table.getSelectionModel().addListSelectionListener(event -> follow());
        table.onSorting(this::follow);
        table.setRowSelectionInterval(0, 0);
        table.setColumnSelectionInterval(0, 0);
    }

    private void follow() {
        word.setEnabled(table.selected().filter(chosen.negate()).isPresent());
        sorted.setText(table.sorted());
    }

    private void choose() {
        table.selected().filter(chosen.negate()).ifPresent(choose);
        table.repaint();
        follow();
    }

    /** Shows findings that have come in. */
    void changed() {
        rows.changed();
    }

    /** Gives the table the keys. */
    void focus() {
        table.requestFocusInWindow();
    }
}
