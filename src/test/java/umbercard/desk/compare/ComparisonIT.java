package umbercard.desk.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.JFrame;
import javax.swing.JTable;
import net.miginfocom.swing.MigLayout;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import umbercard.desk.KilnHill;
import umbercard.desk.OnDesk;
import umbercard.desk.session.Session;
import umbercard.desk.stack.StackPanel;
import umbercard.desk.theme.Theme;
import umbercard.model.Thumbnail;
import umbercard.readings.Evaluation;
import umbercard.words.Words;

class ComparisonIT extends OnDesk {
    private Session session;
    private DialogFixture dialog;
    private int aside = 12;

    @Override
    protected Dimension windowSize() {
        return new Dimension(1180, 620);
    }

    @Override
    protected JFrame makeWindow() {
        Theme.install(false);
        session = new Session(KilnHill.study(), Optional.empty());
        JFrame frame = new JFrame("compare");
        frame.setUndecorated(true);
        frame.getContentPane().setLayout(new MigLayout("insets 14", "[]", "[grow,fill]"));
        frame.getContentPane().add(new StackPanel(session, Evaluation.find()));
        return frame;
    }

    @BeforeEach
    void open() {
        EventQueue.invokeLater(() -> window().button("stack.compare").target().doClick());
        dialog = WindowFinder.findDialog("compare").using(robot());
        until(
                "all is measured",
                () -> IntStream.range(0, 3)
                        .allMatch(row -> table("compare.table").getValueAt(row, 1) != null));
        robot().waitForIdle();
    }

    private JTable table(String name) {
        return robot().finder()
                                .find(
                                        dialog.target(),
                                        component -> name.equals(component.getName()) && component instanceof JTable)
                        instanceof JTable found
                ? found
                : new JTable();
    }

    /** The row of the pair's table that bears that name. */
    private List<String> pair(String reading) {
        JTable pairs = table("compare.pairs");
        return IntStream.range(0, pairs.getRowCount())
                .mapToObj(row -> row(pairs, row))
                .filter(row -> row.get(0).equals(reading))
                .findFirst()
                .orElseThrow();
    }

    private int column(String heading) {
        return ask(() -> table("compare.table").getColumnModel().getColumnIndex(heading));
    }

    private void keepShots(String name) {
        for (boolean dark : new boolean[] {true, false}) {
            act(() -> Theme.install(dark));
            act(dialog.target()::repaint);
            shot(name + (dark ? "-dark" : "-light"));
        }
    }

    /** The words of a row, cell by cell. */
    private List<String> row(JTable table, int row) {
        return ask(() -> IntStream.range(0, table.getColumnCount())
                .mapToObj(column -> table.prepareRenderer(table.getCellRenderer(row, column), row, column))
                .map(cell -> cell instanceof javax.swing.JLabel label
                        ? label.getText()
                        : cell.getAccessibleContext().getAccessibleName())
                .toList());
    }

    private List<String> names() {
        JTable table = table("compare.table");
        return ask(() -> IntStream.range(0, 3)
                .mapToObj(row -> ((Thumbnail) table.getValueAt(row, 0)).name())
                .toList());
    }

    private void strike(int... keys) {
        for (int key : keys) {
            robot().pressAndReleaseKey(key);
        }
        robot().waitForIdle();
    }

    /** Presses a heading; each press {@code aside} of the last one, or two would be one double press. */
    private void pressHeading(int column) {
        aside = -aside;
        JTable table = table("compare.table");
        Point middle = ask(() -> {
            var cell = table.getTableHeader().getHeaderRect(column);
            return new Point((int) cell.getCenterX() + aside, (int) cell.getCenterY());
        });
        robot().click(table.getTableHeader(), middle, MouseButton.LEFT_BUTTON, 1);
        robot().waitForIdle();
    }

    @Test
    void twoSideBySideSayWhatDiffers() {
        assertThat(pair("Dark share"))
                .containsExactly(
                        "Dark share",
                        "58 %, holds",
                        "<html>holds here, look again there;<br>more dark by 8 points</html>",
                        "50 %, look again");
        assertThat(pair("Horizon height").get(PairModel.DIFFERENCE))
                .contains("look again there;<br>higher by 11 points");
        assertThat(pair("Joined masses").get(PairModel.DIFFERENCE)).isEqualTo("less joined by 9 points");
        assertThat(pair("Corners").get(PairModel.DIFFERENCE)).isEqualTo("alike");
        assertThat(dialog.label("compare.counted").text()).isEqualTo("7 readings of 26 differ.");
        keepShots("pair");
        dialog.comboBox("compare.there").selectItem(0);
        assertThat(dialog.label("compare.counted").text()).startsWith("The same thumbnail");
        assertThat(pair("Dark share").get(PairModel.DIFFERENCE)).isEqualTo("alike");
        strike(KeyEvent.VK_ESCAPE);
        dialog.requireNotVisible();
    }

    @Test
    void theSentencesOfTheSelectedReadingStandAtBothSides() {
        JTable pairs = table("compare.pairs");
        act(() -> pairs.setRowSelectionInterval(2, 2));
        assertThat(dialog.textBox("compare.here.sentence").text()).startsWith("The land edge runs at 61 %");
        assertThat(dialog.textBox("compare.there.sentence").text()).startsWith("The horizon runs at 50 %");
    }

    @Test
    void aPressOnAHeadingSortsAndAnotherTurnsTheOrderRound() {
        dialog.toggleButton("compare.all").click();
        assertThat(names()).containsExactly("first", "50 : 50", "a low edge, joined");
        pressHeading(1);
        assertThat(names()).containsExactly("a low edge, joined", "50 : 50", "first");
        assertThat(dialog.label("compare.sorted").text()).isEqualTo("sorted by Dark share, least first");
        keepShots("all");
        pressHeading(1);
        assertThat(names()).containsExactly("first", "50 : 50", "a low edge, joined");
        pressHeading(column("line's height"));
        assertThat(names()).containsExactly("50 : 50", "first", "a low edge, joined");
        pressHeading(column("line's height"));
        assertThat(names())
                .as("what has no figure stays last")
                .containsExactly("first", "50 : 50", "a low edge, joined");
        pressHeading(0);
        assertThat(names()).as("as in the stack").containsExactly("first", "50 : 50", "a low edge, joined");
    }

    @Test
    void keysSortAndChooseAndTheChoiceIsUndone() {
        dialog.toggleButton("compare.all").click();
        strike(KeyEvent.VK_RIGHT, KeyEvent.VK_SPACE);
        assertThat(names()).containsExactly("a low edge, joined", "50 : 50", "first");
        assertThat(ask(() -> table("compare.table").getSelectedRow()))
                .as("the selection goes along")
                .isEqualTo(2);
        dialog.button("compare.choose").requireDisabled();
        strike(KeyEvent.VK_UP, KeyEvent.VK_ENTER);
        assertThat(ask(() -> session.study().chosen())).contains("t2");
        assertThat(row(table("compare.table"), 1).get(0)).isEqualTo("50 : 50, chosen");
        dialog.button("compare.choose").requireDisabled();
        strike(KeyEvent.VK_ESCAPE);
        assertThat(ask(() -> session.undoable().map(Words::say))).contains("choose 50 : 50");
        act(session::undo);
        assertThat(ask(() -> session.study().chosen())).contains("t1");
    }

    @Test
    void theWordChoosesToo() {
        dialog.toggleButton("compare.all").click();
        act(() -> table("compare.table").setRowSelectionInterval(2, 2));
        dialog.button("compare.choose").requireEnabled().click();
        assertThat(ask(() -> session.study().chosen())).contains("t3");
    }

    @Test
    void everyCellSaysFigureAndVerdict() {
        JTable table = table("compare.table");
        String spoken = ask(() -> table.prepareRenderer(table.getCellRenderer(1, 1), 1, 1)
                .getAccessibleContext()
                .getAccessibleName());
        assertThat(spoken).isEqualTo("dark: 50 %, look again");
        Consumer<String> named = name -> assertThat(ask(() -> robot().finder()
                        .findByName(dialog.target(), name, false)
                        .getAccessibleContext()
                        .getAccessibleName()))
                .isNotBlank();
        Stream.of("compare.table", "compare.pairs", "compare.here", "compare.there", "compare.all")
                .forEach(named);
    }
}
