package umbercard.screen;

import java.awt.AWTException;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.Toolkit;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.Thread.UncaughtExceptionHandler;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.BooleanSupplier;
import javax.imageio.ImageIO;
import javax.swing.JFrame;
import javax.swing.ToolTipManager;
import javax.swing.UIManager;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.FailOnThreadViolationRepaintManager;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.fixture.FrameFixture;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * What every UI test stands on: a window of its own for each test method, a robot that does not dawdle, and a watch over
 * the rule that only the event thread touches components. What is thrown on any thread and caught by none fails the test.
 * Modifiers of the robot are the old masks of {@link
 * java.awt.event.InputEvent}, such as {@code CTRL_MASK}; it ignores the new ones without a word.
 */
@ExtendWith({NeedsScreen.class, FailureShot.class})
public abstract class OnScreen {
    private static final Path SHOTS = Path.of("target", "shots");
    private static final Duration PATIENCE = Duration.ofSeconds(10);

    /** Delays that a window manager on a real display needs, in milliseconds; in memory none is. */
    private static final int DELAY_BETWEEN_EVENTS = 60;

    private static final int DELAY_BEFORE_POSTING = 100;

    private final List<Throwable> uncaught = new CopyOnWriteArrayList<>();
    private Robot robot;
    private FrameFixture window;
    private UncaughtExceptionHandler handlerBefore;

    /** Makes the window under test, not yet shown. Called on the event thread before each test. */
    protected abstract JFrame makeWindow();

    /** How large the window opens: by default as a small laptop leaves it, less the bars of its desktop. */
    protected Dimension windowSize() {
        return new Dimension(1280, 700);
    }

    @BeforeAll
    static void watchTheEventThread() {
        FailOnThreadViolationRepaintManager.install();
    }

    @BeforeEach
    final void openWindow() {
        handlerBefore = Thread.getDefaultUncaughtExceptionHandler();
        Thread.setDefaultUncaughtExceptionHandler((thread, failure) -> uncaught.add(failure));
        robot = BasicRobot.robotWithNewAwtHierarchy();
        robot.settings().delayBetweenEvents(Screen.isInMemory() ? 0 : DELAY_BETWEEN_EVENTS);
        robot.settings().eventPostingDelay(Screen.isInMemory() ? 0 : DELAY_BEFORE_POSTING);
        parkPointer();
        JFrame frame = GuiActionRunner.execute(() -> {
            // Otherwise a menu waits for the pointer to stop before it opens another.
            UIManager.put("Menu.useSafeTriangle", false);
            ToolTipManager.sharedInstance().setEnabled(false);
            return makeWindow();
        });
        window = new FrameFixture(robot, frame);
        window.show(windowSize());
    }

    @AfterEach
    final void closeWindow() {
        if (robot != null) {
            robot.cleanUp();
        }
        Thread.setDefaultUncaughtExceptionHandler(handlerBefore);
        uncaught.forEach(failure -> {
            throw new AssertionError("thrown and caught by none", failure);
        });
    }

    protected final Robot robot() {
        return robot;
    }

    protected final FrameFixture window() {
        return window;
    }

    /** Moves the pointer into the lower right corner of the screen, where it hovers over nothing. */
    protected final void parkPointer() {
        Dimension screen = Toolkit.getDefaultToolkit().getScreenSize();
        robot.moveMouse(new Point(screen.width - 10, screen.height - 10));
    }

    /** What {@code question} gives on the event thread. */
    protected static <T> T ask(Callable<T> question) {
        return GuiActionRunner.execute(question);
    }

    /** Waits until {@code holds} does, asked on the event thread; fails by name after ten seconds. */
    protected static void until(String what, BooleanSupplier holds) {
        Pause.pause(
                new Condition(what) {
                    @Override
                    public boolean test() {
                        return ask(holds::getAsBoolean);
                    }
                },
                PATIENCE.toMillis());
    }

    /** Presses at the first place, moves through the others and lets go at the last; places are the component's. */
    protected final void drag(Component component, MouseButton button, List<Point> through) {
        robot.moveMouse(component, through.get(0));
        robot.pressMouse(button);
        for (Point place : through.subList(1, through.size())) {
            robot.moveMouse(component, place);
        }
        robot.releaseMouse(button);
        robot.waitForIdle();
    }

    /**
     * Takes a picture of the window as it stands on the screen, with all that lies over it, and keeps it as {@code
     * target/shots/<test class>-<name>.png}.
     */
    protected final BufferedImage shot(String name) {
        robot.waitForIdle();
        try {
            BufferedImage picture = new java.awt.Robot().createScreenCapture(ask(window.target()::getBounds));
            Files.createDirectories(SHOTS);
            ImageIO.write(
                    picture,
                    "png",
                    SHOTS.resolve(getClass().getSimpleName() + "-" + name + ".png")
                            .toFile());
            return picture;
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        } catch (AWTException failure) {
            throw new IllegalStateException(failure);
        }
    }
}
