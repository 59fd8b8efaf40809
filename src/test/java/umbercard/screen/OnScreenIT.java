package umbercard.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractAction;
import javax.swing.JDialog;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.finder.WindowFinder;
import org.junit.jupiter.api.Test;

/** The screen itself: what the other UI tests take for granted. */
@SuppressWarnings("deprecation") // the robot knows only the old masks of InputEvent
class OnScreenIT extends OnScreen {
    private static final Color GROUND = new Color(0x3a5f7d);

    private final List<String> heard = new ArrayList<>();
    private JPanel ground;
    private JTextField field;

    @Override
    protected Dimension windowSize() {
        return new Dimension(600, 400);
    }

    @Override
    protected JFrame makeWindow() {
        JFrame frame = new JFrame("Screen");
        field = new JTextField(20);
        ground = new JPanel();
        field.setName("field");
        ground.setName("ground");
        ground.setBackground(GROUND);
        ground.getInputMap(JPanel.WHEN_IN_FOCUSED_WINDOW).put(KeyStroke.getKeyStroke("ctrl Z"), "back");
        ground.getActionMap().put("back", new AbstractAction() {
            @Override
            public void actionPerformed(java.awt.event.ActionEvent event) {
                heard.add("ctrl z");
            }
        });
        MouseAdapter listener = new Listener();
        ground.addMouseListener(listener);
        ground.addMouseMotionListener(listener);
        ground.addMouseWheelListener(listener);
        frame.add(field, BorderLayout.NORTH);
        frame.add(ground);
        return frame;
    }

    private final class Listener extends MouseAdapter {
        @Override
        public void mousePressed(MouseEvent event) {
            heard.add("press " + event.getButton() + " x" + event.getClickCount() + (event.isAltDown() ? " alt" : ""));
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            heard.add("drag " + event.getX() + "," + event.getY());
        }

        @Override
        public void mouseReleased(MouseEvent event) {
            heard.add("release");
        }

        @Override
        public void mouseWheelMoved(MouseWheelEvent event) {
            heard.add("wheel " + event.getWheelRotation());
        }
    }

    private List<String> heard() {
        return ask(() -> List.copyOf(heard));
    }

    @Test
    void typesIntoAField() {
        window().textBox("field").enterText("Kiln Hill, first snow: 9 x 12 (25%)");
        window().textBox("field").requireText("Kiln Hill, first snow: 9 x 12 (25%)");
    }

    @Test
    void givesTheFirstFieldTheFocus() {
        until("the field has the focus", field::isFocusOwner);
    }

    @Test
    void turnsTheWheelBothWays() {
        robot().moveMouse(ground, new Point(50, 50));
        robot().rotateMouseWheel(ground, -1);
        robot().rotateMouseWheel(ground, 1);
        robot().waitForIdle();
        assertThat(heard()).containsExactly("wheel -1", "wheel 1");
    }

    @Test
    void dragsBeyondTheWindowWithoutLosingTheMouse() {
        drag(ground, MouseButton.LEFT_BUTTON, List.of(new Point(10, 20), new Point(30, 40), new Point(700, 45)));
        assertThat(heard()).containsExactly("press 1 x1", "drag 30,40", "drag 700,45", "release");
    }

    @Test
    void countsClicksAndTellsButtonsAndAlt() {
        robot().click(ground, new Point(40, 40), MouseButton.LEFT_BUTTON, 2);
        robot().click(ground, new Point(90, 40), MouseButton.RIGHT_BUTTON, 1);
        robot().pressModifiers(InputEvent.ALT_MASK);
        robot().click(ground, new Point(140, 40));
        robot().releaseModifiers(InputEvent.ALT_MASK);
        assertThat(heard().stream().filter(line -> line.startsWith("press")))
                .containsExactly("press 1 x1", "press 1 x2", "press 3 x1", "press 1 x1 alt");
    }

    @Test
    void strikesAShortcut() {
        robot().pressAndReleaseKey(KeyEvent.VK_Z, InputEvent.CTRL_MASK);
        assertThat(heard()).containsExactly("ctrl z");
        window().textBox("field").requireEmpty();
    }

    @Test
    void takesTruePictures() {
        BufferedImage picture = shot("ground");
        assertThat(picture.getWidth()).isEqualTo(600);
        assertThat(picture.getRGB(300, 300)).isEqualTo(GROUND.getRGB());
    }

    @Test
    void keepsAModalDialogInFrontAndGivesTheFocusBack() {
        assumeThat(Screen.isInMemory())
                .as("a bare display has no window manager to give the focus back")
                .isTrue();
        robot().click(ground, new Point(200, 200));
        JDialog dialog = ask(() -> {
            JDialog made = new JDialog((JFrame) window().target(), "Question", true);
            made.setName("question");
            made.add(new JLabel("Well?"));
            made.setBounds(300, 250, 200, 100);
            return made;
        });
        javax.swing.SwingUtilities.invokeLater(() -> dialog.setVisible(true));
        WindowFinder.findDialog("question").using(robot()).requireModal();
        ask(() -> heard.removeIf(line -> true));
        robot().click(ground, new Point(50, 50));
        assertThat(heard()).isEmpty();
        ask(() -> {
            dialog.dispose();
            return true;
        });
        until("the focus is back", field::isFocusOwner);
    }

    @Test
    void refusesComponentsTouchedOffTheEventThread() {
        assertThatThrownBy(() -> field.setText("from the wrong thread")).hasMessageContaining("EDT violation");
    }
}
