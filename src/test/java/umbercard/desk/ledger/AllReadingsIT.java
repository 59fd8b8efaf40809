package umbercard.desk.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.swing.JButton;
import javax.swing.JFrame;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import net.miginfocom.swing.MigLayout;
import org.assertj.swing.core.matcher.JButtonMatcher;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import umbercard.desk.KilnHill;
import umbercard.desk.OnDesk;
import umbercard.desk.session.Session;
import umbercard.desk.theme.Theme;
import umbercard.door.Place;
import umbercard.readings.Evaluation;
import umbercard.store.Preferred;
import umbercard.words.Words;

class AllReadingsIT extends OnDesk {
    private final List<List<Place>> looked = new ArrayList<>();
    private Session session;
    private DialogFixture all;

    @Override
    protected Dimension windowSize() {
        return new Dimension(1180, 620);
    }

    @Override
    protected JFrame makeWindow() {
        Theme.install(false);
        forget();
        session = new Session(KilnHill.study(), Optional.empty());
        session.show("t2");
        JFrame frame = new JFrame("ledger");
        frame.setUndecorated(true);
        JPanel desk = new JPanel(new MigLayout("insets 16", "[grow,fill]", "[grow,fill][116!,fill]"));
        desk.add(new JPanel(), "wrap");
        desk.add(new LedgerPanel(session, Evaluation.find(), looked::add, () -> {}));
        frame.setContentPane(desk);
        return frame;
    }

    private static void forget() {
        Preferred.keepLimits(Map.of());
        Preferred.keepSilenced(Set.of());
    }

    @AfterEach
    void forgetWishes() {
        forget();
    }

    @BeforeEach
    void openByKeyboard() {
        JButton more = more();
        until("the readings are counted", () -> ask(more::getText).contains("more"));
        act(more::requestFocusInWindow);
        until("it has the focus", more::isFocusOwner);
        robot().pressAndReleaseKey(KeyEvent.VK_SPACE);
        all = WindowFinder.findDialog("all-readings").using(robot());
        until("the list has the focus", () -> list().isFocusOwner());
    }

    private JButton more() {
        return window().button(JButtonMatcher.withName("ledger.more")).target();
    }

    @SuppressWarnings("unchecked")
    private JList<ReadingRow> list() {
        return all.list("all-readings.list").target();
    }

    private ReadingRow row(String id) {
        return ask(() -> {
            for (int i = 0; i < list().getModel().getSize(); i++) {
                if (list().getModel().getElementAt(i).rule().id().equals(id)) {
                    return list().getModel().getElementAt(i);
                }
            }
            throw new AssertionError("no reading " + id);
        });
    }

    private void select(String id) {
        act(() -> list().setSelectedValue(row(id), true));
    }

    private JSpinner limit(String name) {
        return all.spinner("limit." + name).target();
    }

    private String sentence() {
        return all.textBox("rule.sentence").text();
    }

    private boolean inLedger(String id) {
        return ask(() -> !robot().finder()
                .findAll(window().target(), part -> ("ledger.reading." + id).equals(part.getName()))
                .isEmpty());
    }

    private void dialogShot(String name) {
        act(() -> all.target().setLocation(330, 20));
        act(() -> Theme.install(false));
        act(() -> {
            window().target().repaint();
            all.target().repaint();
        });
        shot(name + "-light");
        act(() -> Theme.install(true));
        act(() -> {
            window().target().repaint();
            all.target().repaint();
        });
        shot(name + "-dark");
        act(() -> Theme.install(false));
    }

    @Test
    void everyReadingStandsThereWithNameVerdictAndSentence() {
        int count = Evaluation.find().on().size();
        assertThat(count).isGreaterThan(10);
        assertThat(ask(() -> list().getModel().getSize())).isEqualTo(count);
        until("all are read", () -> row("tangents").finding().isPresent());
        assertThat(row("dark-share").spoken()).startsWith("Dark share, look again. Dark 50 %");
        assertThat(sentence()).startsWith("Look again within 0.05 of one half");
        assertThat(all.textBox("rule.source").text()).startsWith("Source: Thirds: Smith 1797");
        assertThat(ask(() -> limit("even").getAccessibleContext().getAccessibleName()))
                .isEqualTo("an even split lies within, share, 0 to 0.5");
        dialogShot("all-readings");
        assertThat(all.target().getWidth()).isLessThanOrEqualTo(1180);
        assertThat(all.target().getHeight()).isLessThanOrEqualTo(620);
    }

    @Test
    void theSelectedOnesPlaceIsShownUntilTheWindowCloses() {
        until("it is read", () -> row("horizon-height").finding().isPresent());
        robot().pressAndReleaseKey(KeyEvent.VK_DOWN);
        robot().pressAndReleaseKey(KeyEvent.VK_DOWN);
        until(
                "its place is told",
                () -> !looked.isEmpty()
                        && looked.get(looked.size() - 1)
                                .equals(row("horizon-height").places())
                        && !row("horizon-height").places().isEmpty());
        robot().pressAndReleaseKey(KeyEvent.VK_ESCAPE);
        until("the window is closed", () -> !all.target().isShowing());
        assertThat(looked.get(looked.size() - 1)).isEmpty();
    }

    /** Dark 58 %. */
    private void showFirst() {
        act(() -> session.show("t1"));
        until("it holds", () -> row("dark-share").verdict().equals("holds"));
    }

    @Test
    void aLimitForThisStudyCountsAtOnceAndIsTakenBackByUndo() {
        showFirst();
        act(() -> limit("most-night-snow").setValue(0.5));
        assertThat(session.study().limits()).isEqualTo(Map.of("dark-share", Map.of("most-night-snow", 0.5)));
        assertThat(Preferred.limits()).isEmpty();
        assertThat(sentence()).contains("or above 0.5)");
        until("it is too dark now", () -> row("dark-share").verdict().equals("look again"));
        act(() -> limit("most-night-snow").setValue(0.52));
        assertThat(Words.say(session.undoable().orElseThrow())).isEqualTo("limit of Dark share");
        act(session::undo);
        assertThat(session.study().limits()).as("steps in a row are one").isEmpty();
        until("the field shows it", () -> limit("most-night-snow").getValue().equals(0.95));
    }

    @Test
    void aLimitForEveryStudyIsKeptForThePainterAndLiesUnderTheStudys() {
        showFirst();
        all.radioButton("scope.every-study").click();
        act(() -> limit("most-night-snow").setValue(0.5));
        assertThat(Preferred.limits()).isEqualTo(Map.of("dark-share", Map.of("most-night-snow", 0.5)));
        assertThat(session.study().limits()).isEmpty();
        until("it is too dark now", () -> row("dark-share").verdict().equals("look again"));
        all.radioButton("scope.study").click();
        assertThat(limit("most-night-snow").getValue()).isEqualTo(0.5);
        act(() -> limit("most-night-snow").setValue(0.8));
        until("the study's goes before", () -> row("dark-share").verdict().equals("holds"));
        all.radioButton("scope.every-study").click();
        assertThat(all.textBox("rule.note").text()).startsWith("In this study it has its own limits");
        assertThat(limit("most-night-snow").getValue()).isEqualTo(0.5);
        dialogShot("all-readings-every-study");
        all.button("rule.reset").click();
        assertThat(Preferred.limits()).isEmpty();
        assertThat(session.study().limits()).isNotEmpty();
    }

    @Test
    void aSilencedReadingLeavesTheLedgerAndComesBack() {
        until("the ledger tells it", () -> inLedger("dark-share"));
        all.checkBox("rule.silence").click();
        until("it is silent", () -> !inLedger("dark-share"));
        assertThat(session.study().silenced()).containsExactly("dark-share");
        assertThat(row("dark-share").verdict()).isEqualTo("silenced");
        dialogShot("all-readings-silenced");
        all.button("rule.reset").click();
        until("it is heard again", () -> inLedger("dark-share"));
        all.radioButton("scope.every-study").click();
        all.checkBox("rule.silence").click();
        until("it is silent in every study", () -> !inLedger("dark-share"));
        assertThat(Preferred.silenced()).containsExactly("dark-share");
        assertThat(session.study().silenced()).isEmpty();
    }

    @Test
    void allArePutBackAtOnce() {
        act(() -> limit("even").setValue(0.02));
        select("mirror");
        all.checkBox("rule.silence").click();
        all.button("rule.reset-all").click();
        assertThat(session.study()).isEqualTo(KilnHill.study());
        all.button("rule.reset-all").requireDisabled();
        all.button("rule.reset").requireDisabled();
    }

    @Test
    void everyRulesLimitsFitTheWindow() {
        act(() -> all.target().setSize(all.target().getMinimumSize()));
        for (String id : List.of("dark-share", "tangents", "small-pieces")) {
            select(id);
            robot().waitForIdle();
            Component reset = all.button("rule.reset").target();
            Component form = reset.getParent();
            assertThat(ask(() -> reset.getY() + reset.getHeight())).isLessThanOrEqualTo(ask(form::getHeight));
            for (Component part : ask(() -> ((JPanel) form).getComponents())) {
                assertThat(ask(() -> part.getHeight()))
                        .isGreaterThanOrEqualTo(ask(() -> Math.min(part.getPreferredSize().height, 12)));
            }
        }
        shot("all-readings-least");
    }
}
