package umbercard.desk.stack;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.JFrame;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.fixture.JListFixture;
import org.junit.jupiter.api.Test;
import umbercard.desk.KilnHill;
import umbercard.desk.OnDesk;
import umbercard.desk.session.Session;
import umbercard.desk.theme.Theme;
import umbercard.geometry.Outline;
import umbercard.model.Mark;
import umbercard.model.Study;
import umbercard.model.Surface;
import umbercard.model.Thumbnail;
import umbercard.model.edit.Edits;
import umbercard.readings.Evaluation;
import umbercard.words.Words;

class StackPanelIT extends OnDesk {
    private Session session;
    private StackPanel panel;

    @Override
    protected Dimension windowSize() {
        return new Dimension(160, 560);
    }

    @Override
    protected JFrame makeWindow() {
        Theme.install(false);
        session = new Session(KilnHill.study(), Optional.empty());
        JFrame frame = new JFrame("stack");
        frame.setUndecorated(true);
        JPanel desk = new JPanel(new MigLayout("insets 14", "[]", "[grow,fill]"));
        panel = new StackPanel(session, Evaluation.find());
        desk.add(panel);
        frame.setContentPane(desk);
        return frame;
    }

    private JListFixture stack() {
        return window().list("stack.thumbnails");
    }

    private List<String> names() {
        return ask(
                () -> session.study().thumbnails().stream().map(Thumbnail::name).toList());
    }

    private String shown() {
        return ask(() -> session.shown());
    }

    private String undoable() {
        return ask(() -> session.undoable().map(Words::say).orElse("nothing"));
    }

    private String spoken(int index) {
        return ask(() -> stack().target()
                .getAccessibleContext()
                .getAccessibleChild(index)
                .getAccessibleContext()
                .getAccessibleName());
    }

    @Test
    void clicksAndArrowsLayAThumbnailOnTheCard() {
        stack().requireSelectedItems(0);
        stack().clickItem(1);
        assertThat(shown()).isEqualTo("t2");
        shots("stack");
        robot().pressAndReleaseKey(KeyEvent.VK_DOWN);
        assertThat(shown()).isEqualTo("t3");
        act(() -> session.show("t1"));
        stack().requireSelectedItems(0);
        assertThat(undoable()).isEqualTo("nothing");
    }

    @Test
    void anotherAddsAnEmptyOneAndShowsIt() {
        window().button("stack.another").click();
        assertThat(names()).containsExactly("first", "50 : 50", "a low edge, joined", "no. 4");
        assertThat(ask(() -> session.thumbnail().orElseThrow().marks())).isEmpty();
        stack().requireSelectedItems(3);
        assertThat(undoable()).isEqualTo("another thumbnail");
        act(session::undo);
        assertThat(names()).hasSize(3);
        assertThat(shown()).isEqualTo("t1");
    }

    @Test
    void aCopyIsShownAndCanBeChosen() {
        stack().clickItem(1);
        window().button("stack.copy").click();
        assertThat(names()).endsWith("50 : 50, copy");
        stack().requireSelectedItems(3);
        window().button("stack.choose").requireEnabled().click();
        assertThat(ask(() -> session.study().chosen())).contains(shown());
        window().button("stack.choose").requireDisabled();
        until("its share is measured", () -> spoken(3).equals("50 : 50, copy, chosen, dark 50, horizon .50"));
        shots("chosen");
        act(session::undo);
        assertThat(ask(() -> session.study().chosen())).contains("t1");
    }

    @Test
    void enterChooses() {
        stack().clickItem(2);
        robot().pressAndReleaseKey(KeyEvent.VK_ENTER);
        assertThat(ask(() -> session.study().chosen())).contains("t3");
    }

    @Test
    void aThumbnailIsRenamedByKeyAndOnItsTab() {
        stack().clickItem(0);
        robot().pressAndReleaseKey(KeyEvent.VK_F2);
        window().textBox("stack.rename").requireFocused();
        robot().enterText("high edge");
        shot("rename");
        robot().pressAndReleaseKey(KeyEvent.VK_ENTER);
        assertThat(names()).startsWith("high edge");
        assertThat(undoable()).isEqualTo("rename first");

        Point tab = ask(() -> {
            Point corner = stack().target().indexToLocation(1);
            return new Point(corner.x + 34, corner.y + 14);
        });
        robot().click(stack().target(), tab, MouseButton.LEFT_BUTTON, 2);
        window().textBox("stack.rename").requireFocused();
        robot().enterText("never");
        robot().pressAndReleaseKey(KeyEvent.VK_ESCAPE);
        assertThat(names()).contains("50 : 50");
        stack().requireFocused();
    }

    @Test
    void settlingTakesTheNameAsFarAsItIsTyped() {
        act(panel::settle);
        stack().clickItem(0);
        robot().pressAndReleaseKey(KeyEvent.VK_F2);
        act(panel::settle);
        assertThat(undoable()).isEqualTo("nothing");

        robot().enterText("high");
        act(panel::settle);
        assertThat(names()).startsWith("high");
        window().textBox("stack.rename").requireFocused();
        robot().enterText("er");
        robot().pressAndReleaseKey(KeyEvent.VK_ENTER);
        assertThat(names()).startsWith("higher");
    }

    @Test
    void oneAloneIsNotCompared() {
        window().button("stack.compare").requireEnabled();
        stack().clickItem(1);
        robot().pressAndReleaseKey(KeyEvent.VK_DELETE);
        robot().pressAndReleaseKey(KeyEvent.VK_DELETE);
        window().button("stack.compare").requireDisabled();
    }

    @Test
    void deleteTakesOneAwayButNotTheLast() {
        stack().clickItem(1);
        robot().pressAndReleaseKey(KeyEvent.VK_DELETE);
        assertThat(names()).containsExactly("first", "a low edge, joined");
        assertThat(undoable()).isEqualTo("remove 50 : 50");
        robot().pressAndReleaseKey(KeyEvent.VK_DELETE);
        robot().pressAndReleaseKey(KeyEvent.VK_DELETE);
        assertThat(names()).hasSize(1);
        act(session::undo);
        act(session::undo);
        assertThat(names()).containsExactly("first", "50 : 50", "a low edge, joined");
    }

    @Test
    void theShownOneFollowsTheHand() {
        until("shares are measured", () -> spoken(0).contains("dark 58"));
        Study asIf = ask(() -> Edits.addMark("t1", new Mark("m9", Mark.Kind.LAY, Outline.rectangle(0, 0, 1.4, 1)))
                .apply(session.study()));
        act(() -> session.preview(Optional.of(asIf)));
        until("the share follows", () -> spoken(0).contains("dark 100"));
        act(() -> session.preview(Optional.empty()));
        until("the share returns", () -> spoken(0).contains("dark 58"));
        assertThat(undoable()).isEqualTo("nothing");
    }

    @Test
    void uprightThumbnailsFitToo() {
        act(() -> session.open(
                KilnHill.study().withSurface(new Surface(9, 12, Surface.Unit.IN, 0.25, Optional.empty(), true)),
                Optional.empty()));
        shots("upright");
        assertThat(ask(() -> stack().target().getPreferredSize().width)).isLessThanOrEqualTo(124);
    }

    @Test
    void moreThanFitAreScrolled() {
        for (int i = 0; i < 3; i++) {
            window().button("stack.copy").click();
        }
        shots("many");
        assertThat(ask(() -> stack().target().getVisibleRect()))
                .satisfies(visible -> assertThat(ask(() -> stack().target().getCellBounds(5, 5)))
                        .satisfies(cell -> assertThat(visible.contains(cell.getCenterX(), cell.getCenterY()))
                                .isTrue()));
    }
}
