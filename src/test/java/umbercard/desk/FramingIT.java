package umbercard.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import javax.swing.JComponent;
import org.assertj.swing.core.MouseButton;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import umbercard.desk.canvas.NotanCard;
import umbercard.door.Instrument;
import umbercard.model.Frame;
import umbercard.model.Framing;
import umbercard.model.Mark;

/** The frame is moved, scaled, leveled and mirrored on the photograph by pointer and by keyboard. */
@SuppressWarnings("deprecation") // the robot knows only the old masks of InputEvent
class FramingIT extends AtDesk {
    @BeforeEach
    void openKilnHill() {
        act(desk().files()::showKilnHill);
        until("its photograph is there", () -> desk().session().photograph().isPresent());
        settled();
    }

    private Component view() {
        return robot().finder().findByName(desk(), "framing-view", true);
    }

    private void beginFraming() {
        window().toggleButton("frame").click();
        until("the view has the keys", () -> view().isFocusOwner());
        settled();
    }

    private Frame frame() {
        return study().reference().orElseThrow().frame();
    }

    private Framing framing() {
        return ask(() -> new Framing(desk().session().photograph().orElseThrow().ratio(), study().ratio()));
    }

    private Point middle() {
        Dimension size = ask(view()::getSize);
        return new Point(size.width / 2, size.height / 2);
    }

    private String figures() {
        return window().label("framing-figures").text();
    }

    private void stroke(int key, int oldMask, int times) {
        for (int i = 0; i < times; i++) {
            robot().pressAndReleaseKey(key, oldMask);
        }
        robot().waitForIdle();
    }

    @Test
    void thePointerMovesScalesAndTurnsTheFrame() {
        List<Mark> marks = thumbnail().marks();
        beginFraming();
        robot().rotateMouseWheel(view(), 15);
        robot().waitForIdle();
        Frame small = frame();
        assertThat(small.height()).isLessThan(1);
        drag(view(), MouseButton.LEFT_BUTTON, List.of(middle(), new Point(middle().x + 10, middle().y + 5)));
        Frame moved = frame();
        assertThat(moved.center().x()).isGreaterThan(small.center().x());
        assertThat(moved.height()).isEqualTo(small.height());
        drag(
                view(),
                MouseButton.RIGHT_BUTTON,
                List.of(new Point(middle().x + 100, middle().y), new Point(middle().x + 100, middle().y - 12)));
        assertThat(frame().tilt()).isNegative();
        assertThat(figures()).startsWith("tilt −").contains(" % of the photograph");
        shots("turned");
        assertThat(framing().isInside(frame())).isTrue();
        assertThat(thumbnail().marks()).isEqualTo(marks);
        strike(KeyEvent.VK_Z, InputEvent.CTRL_MASK);
        assertThat(frame()).isEqualTo(moved);
        strike(KeyEvent.VK_Z, InputEvent.CTRL_MASK);
        assertThat(frame()).isEqualTo(small);
    }

    @Test
    void theKeyboardDoesAllOfItTooAndLettersAreTheFramesMeanwhile() {
        NotanCard card = card();
        strike(KeyEvent.VK_V);
        until("the view has the keys", () -> view().isFocusOwner());
        stroke(KeyEvent.VK_DOWN, InputEvent.ALT_MASK | InputEvent.SHIFT_MASK, 3);
        Frame small = frame();
        assertThat(small.height()).isLessThan(.9);
        stroke(KeyEvent.VK_RIGHT, InputEvent.SHIFT_MASK, 1);
        assertThat(frame().center().x()).isGreaterThan(small.center().x());
        stroke(KeyEvent.VK_LEFT, InputEvent.ALT_MASK, 5);
        assertThat(frame().tilt()).isCloseTo(-.5 + small.tilt(), within(1e-9));
        strike(KeyEvent.VK_M);
        assertThat(frame().mirrored()).isNotEqualTo(small.mirrored());
        strike(KeyEvent.VK_U);
        assertThat(frame().tilt()).isZero();
        assertThat(figures()).startsWith("upright");
        strike(KeyEvent.VK_HOME);
        assertThat(frame()).isEqualTo(framing().largest().withHeight(frame().height()));
        strike(KeyEvent.VK_L);
        Component view = view();
        strike(KeyEvent.VK_ENTER);
        until("the card has the keys", card::isFocusOwner);
        assertThat(ask(view::isShowing)).isFalse();
        assertThat(ask(() -> card.instrument().map(Instrument::id))).contains("lay-dark");
        strike(KeyEvent.VK_L);
        assertThat(ask(() -> card.instrument().map(Instrument::id))).contains("lift-light");
    }

    @Test
    void theHorizonIsMarkedByADragByTwoClicksAndByKeys() {
        beginFraming();
        window().toggleButton("framing-mark").click();
        Point from = new Point(middle().x - 80, middle().y + 8);
        Point to = new Point(middle().x + 80, middle().y - 8);
        drag(view(), MouseButton.LEFT_BUTTON, List.of(from, middle(), to));
        // 16 up over 160 to the right, seen upright.
        assertThat(frame().tilt()).isCloseTo(5.71, within(.05));
        assertThat(study().reference().orElseThrow().ownHorizon()).isPresent();
        shot("leveled");
        strike(KeyEvent.VK_U);
        strike(KeyEvent.VK_H);
        robot().click(view(), new Point(middle().x - 80, middle().y));
        shot("marking");
        robot().click(view(), new Point(middle().x + 80, middle().y + 16));
        robot().waitForIdle();
        assertThat(frame().tilt()).isCloseTo(-5.71, within(.05));
        strike(KeyEvent.VK_U);
        strike(KeyEvent.VK_H);
        strike(KeyEvent.VK_ENTER);
        stroke(KeyEvent.VK_RIGHT, InputEvent.SHIFT_MASK, 10);
        stroke(KeyEvent.VK_UP, 0, 10);
        strike(KeyEvent.VK_ENTER);
        assertThat(frame().tilt()).isCloseTo(5.71, within(.05));
    }

    @Test
    void letGoTheFrameReachesOutAndAThumbnailCanBeFramedAlone() {
        beginFraming();
        window().toggleButton("framing-inside").requireSelected().click();
        drag(view(), MouseButton.LEFT_BUTTON, List.of(middle(), new Point(middle().x + 120, middle().y - 60)));
        settled();
        assertThat(framing().isInside(frame())).isFalse();
        assertThat(figures()).contains(" % bare");
        shots("reaching-out");
        Frame shared = frame();
        window().toggleButton("framing-own").click();
        window().button("framing-mirror").click();
        assertThat(frame()).isEqualTo(shared);
        assertThat(thumbnail().frame()).contains(shared.withMirrored(!shared.mirrored()));
        window().button("framing-done").click();
        settled();
        shot("card");
        window().toggleButton("frame").requireNotSelected();
    }

    @Test
    void everythingFitsTheSmallestDesk() {
        beginFraming();
        window().toggleButton("framing-inside").click();
        stroke(KeyEvent.VK_UP, InputEvent.ALT_MASK | InputEvent.SHIFT_MASK, 3);
        stroke(KeyEvent.VK_RIGHT, InputEvent.ALT_MASK | InputEvent.SHIFT_MASK, 11);
        window().resizeTo(ask(desk()::getMinimumSize));
        act(desk()::validate);
        settled();
        for (String name : List.of("framing-words", "framing-facts")) {
            JComponent row = (JComponent) window().panel(name).target();
            for (Component part : ask(row::getComponents)) {
                assertThat(ask(() -> part.getX() + part.getWidth() <= row.getWidth()
                                && part.getWidth() >= part.getPreferredSize().width
                                && row.getVisibleRect().width == row.getWidth()))
                        .as(part.toString())
                        .isTrue();
            }
        }
        shot("smallest");
    }
}
