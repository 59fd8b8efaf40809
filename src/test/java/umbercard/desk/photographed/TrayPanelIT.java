package umbercard.desk.photographed;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JFrame;
import org.assertj.swing.core.MouseButton;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import umbercard.desk.OnDesk;
import umbercard.desk.theme.Theme;
import umbercard.model.Box;
import umbercard.photo.TraySampling.Cell;
import umbercard.photo.TraySampling.Look;
import umbercard.picture.Picture;
import umbercard.spectra.Camera;
import umbercard.spectra.Lights;
import umbercard.spectra.Pinhole;
import umbercard.spectra.TrayScene;
import umbercard.spectra.Trays;
import umbercard.words.Trouble;

/** A tray of 33 sticks rendered from spectra, marked with pointer and keyboard. */
class TrayPanelIT extends OnDesk {
    private static final TrayScene SCENE = Trays.tray(Trays.UNEVEN);
    private static final Pinhole VIEW = Trays.view(SCENE);
    private static Picture photograph = new Picture(1, 1, new int[1]);

    private final List<Box> taken = new ArrayList<>();
    private final List<String> left = new ArrayList<>();
    private TrayPanel panel;

    @BeforeAll
    static void photograph() throws Trouble {
        photograph = Trays.photograph(SCENE, Camera.fixed(Lights.D50, 0.85, 8));
    }

    @Override
    protected Dimension windowSize() {
        return new Dimension(1040, 640);
    }

    @Override
    protected JFrame makeWindow() {
        Theme.install(false);
        panel = new TrayPanel("tray.jpg", photograph, "tray", taken::add, () -> left.add("left"));
        JFrame frame = new JFrame("tray");
        frame.setContentPane(panel);
        return frame;
    }

    private MarkedPhotograph marked() {
        return robot().finder().findByName("photographed.photograph", MarkedPhotograph.class, true);
    }

    private Handle corner(int number) {
        return robot().finder().findByName("photographed.corner." + number, Handle.class, true);
    }

    private Point onScreen(umbercard.geometry.Point place) {
        umbercard.geometry.Point at = ask(() -> marked().onScreen(place));
        return new Point((int) Math.round(at.x()), (int) Math.round(at.y()));
    }

    private void press(umbercard.geometry.Point place) {
        robot().click(marked(), onScreen(place));
    }

    private List<Cell> cells() {
        return ask(() -> robot().finder()
                .findByName("photographed.cells", CellsView.class, true)
                .cells());
    }

    private void markAll() {
        act(() -> panel.corners(VIEW.corners(SCENE.width(), SCENE.height())));
        SCENE.whites(VIEW).forEach(this::press);
        List<umbercard.geometry.Point> whites = ask(() -> marked().whites());
        for (int i = 0; i < whites.size(); i++) {
            assertThat(whites.get(i).distance(SCENE.whites(VIEW).get(i)))
                    .as("within a pixel of the screen, which is three of the photograph")
                    .isLessThan(3);
        }
        until("the tray is looked into", () -> cells().size() == 36);
    }

    @Test
    void theSticksOfATrayBecomeABox() {
        assertThat(window().textBox("photographed.told").text()).isEqualTo("Press what is white.");
        window().button("photographed.take").requireDisabled();
        markAll();
        until("33 are found", () -> window().textBox("photographed.told").text().startsWith("33 sticks are found."));
        assertThat(window().textBox("photographed.told").text()).contains("B3, D4", "A5, C6, F1");
        shots("marked");
        double[] errors = Trays.errors(SCENE, cells());
        assertThat(Trays.quantile(errors, 0.5)).isLessThan(1.2);
        window().textBox("photographed.name").setText("Kiln Yard 36");
        window().button("photographed.take").click();
        assertThat(taken).hasSize(1);
        assertThat(taken.get(0).name()).isEqualTo("Kiln Yard 36");
        assertThat(taken.get(0).sticks()).hasSize(33);
    }

    /** Two pixels of the screen are the finest that a hand can do; arrow keys go by one pixel of the photograph. */
    @Test
    void aCornerFollowsTheHandAndTheKeys() {
        umbercard.geometry.Point before = ask(() -> corner(1).place());
        umbercard.geometry.Point wanted =
                VIEW.corners(SCENE.width(), SCENE.height()).get(0);
        Point from = onScreen(before);
        Point to = onScreen(wanted);
        drag(
                corner(1),
                MouseButton.LEFT_BUTTON,
                List.of(new Point(14, 14), new Point(14 + to.x - from.x, 14 + to.y - from.y)));
        umbercard.geometry.Point dragged = ask(() -> corner(1).place());
        assertThat(dragged.distance(wanted)).isLessThan(6);
        robot().focusAndWaitForFocusGain(corner(1));
        robot().pressAndReleaseKey(KeyEvent.VK_LEFT);
        robot().pressKey(KeyEvent.VK_SHIFT);
        robot().pressAndReleaseKey(KeyEvent.VK_DOWN);
        robot().releaseKey(KeyEvent.VK_SHIFT);
        umbercard.geometry.Point moved = ask(() -> corner(1).place());
        assertThat(moved.distance(dragged.plus(-1, 10))).isLessThan(1e-9);
    }

    @Test
    void aWhiteIsMarkedByKeyboardTooAndTakenAway() {
        act(() -> panel.corners(VIEW.corners(SCENE.width(), SCENE.height())));
        window().button("photographed.add-white").click();
        Handle white = robot().finder().findByName("photographed.white.1", Handle.class, true);
        until("it has the keyboard", white::isFocusOwner);
        robot().pressAndReleaseKey(KeyEvent.VK_DELETE);
        assertThat(ask(() -> marked().whites())).isEmpty();
        until(
                "a white is asked for",
                () -> window().textBox("photographed.told").text().equals("Press what is white."));
    }

    @Test
    void whatIsWrongIsSaidAndPutRight() {
        markAll();
        List<umbercard.geometry.Point> corners = VIEW.corners(SCENE.width(), SCENE.height());
        act(() -> panel.corners(List.of(corners.get(0), corners.get(3), corners.get(2), corners.get(1))));
        until(
                "the corners are wrong",
                () -> window().textBox("photographed.told").text().contains("mark them clockwise"));
        window().button("photographed.take").requireDisabled();
        act(() -> panel.corners(corners));
        until(
                "they are right again",
                () -> window().textBox("photographed.told").text().contains("33 sticks"));
        window().button("photographed.take").requireEnabled();
    }

    @Test
    void theGridIsThePainters() {
        markAll();
        window().spinner("photographed.rows").enterTextAndCommit("3");
        until("half as many cells are looked into", () -> cells().size() == 18);
        assertThat(cells()).anyMatch(cell -> cell.look() != Look.STICK);
        window().button("photographed.leave").click();
        assertThat(left).hasSize(1);
        assertThat(taken).isEmpty();
    }
}
