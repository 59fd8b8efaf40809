package umbercard.desk;

import java.awt.AWTError;
import java.awt.EventQueue;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.awt.Point;
import java.awt.Toolkit;
import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;
import java.lang.reflect.InvocationTargetException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.ToDoubleFunction;
import javax.swing.SwingUtilities;
import umbercard.bench.FrameTimes;
import umbercard.bench.Scenes;
import umbercard.bench.Scenes.Dragged;
import umbercard.desk.canvas.CardPixels;
import umbercard.desk.canvas.NotanCard;
import umbercard.desk.session.Session;
import umbercard.desk.theme.Theme;
import umbercard.door.Edit;
import umbercard.kernel.Plugins;
import umbercard.model.Study;
import umbercard.model.Surface;
import umbercard.model.Thumbnail;
import umbercard.model.edit.Edits;
import umbercard.readings.Evaluation;
import umbercard.words.Message;

/**
 * Times the frames of dragging a point on the real desk: Kiln Hill with its photograph and its notes, but with many marks
 * on the thumbnail. The pointer's events go through the window, as the system would send them.
 */
public final class Frames {
    private static final int GESTURES = 6;
    private static final int EVENTS = 120;
    private static final int WARM = 150;

    /** Pixels from the middle of the circle on which the pointer moves. */
    private static final double CIRCLE = 14;

    private final DeskWindow window;
    private final FrameClock clock;

    private Frames(DeskWindow window, FrameClock clock) {
        this.window = window;
        this.clock = clock;
    }

    /** Whether there is a display to open a window on. */
    public static boolean hasDisplay() {
        try {
            return !GraphicsEnvironment.isHeadless()
                    && GraphicsEnvironment.getLocalGraphicsEnvironment().getDefaultScreenDevice() != null;
        } catch (AWTError | HeadlessException none) {
            return false;
        }
    }

    /**
     * Opens the desk, drags points, closes it.
     *
     * @param milliseconds between two events of the pointer
     */
    public static List<FrameTimes> measure(int nodes, int milliseconds) throws InterruptedException {
        Frames frames = on(Frames::open);
        List<FrameTimes> all = new ArrayList<>();
        try {
            frames.settle();
            frames.scene(200, nodes, Dragged.ORDINARY);
            frames.gesture(200, 0, WARM, milliseconds);
            for (int marks : new int[] {200, 1000}) {
                for (Dragged dragged : Dragged.values()) {
                    all.add(frames.timed(marks, nodes, dragged, milliseconds));
                }
            }
        } finally {
            frames.close();
        }
        return all;
    }

    private static Frames open() {
        Theme.install(false);
        Surface surface = new Surface(12, 9, Surface.Unit.IN, 0.25, Optional.empty(), false);
        DeskWindow window = new DeskWindow(
                new Session(Study.begin("", surface), Optional.empty()),
                Plugins.of(List.of(new MoveNode())),
                Evaluation.find());
        window.setVisible(true);
        window.files().showKilnHill();
        FrameClock clock = new FrameClock(window);
        Toolkit.getDefaultToolkit().getSystemEventQueue().push(clock);
        return new Frames(window, clock);
    }

    private void close() throws InterruptedException {
        on(() -> {
            window.dispose();
            return true;
        });
    }

    private FrameTimes timed(int marks, int nodes, Dragged dragged, int milliseconds) throws InterruptedException {
        scene(marks, nodes, dragged);
        gesture(marks, 0, WARM, milliseconds);
        on(clock::takeLongestOther);
        List<FrameClock.Frame> frames = new ArrayList<>();
        for (int i = 1; i <= GESTURES; i++) {
            frames.addAll(gesture(marks, i * nodes / (GESTURES + 1), EVENTS, milliseconds));
        }
        String name = dragged == Dragged.MASS ? "a mass over a third of the card" : "an ordinary mark";
        return new FrameTimes(
                marks,
                nodes,
                name,
                milliseconds,
                of(frames, MouseEvent.MOUSE_PRESSED, FrameClock.Frame::took),
                of(frames, MouseEvent.MOUSE_DRAGGED, FrameClock.Frame::took),
                of(frames, MouseEvent.MOUSE_DRAGGED, FrameClock.Frame::cpu),
                of(frames, MouseEvent.MOUSE_DRAGGED, FrameClock.Frame::waited),
                on(clock::takeLongestOther));
    }

    private static List<Double> of(List<FrameClock.Frame> frames, int id, ToDoubleFunction<FrameClock.Frame> figure) {
        return frames.stream()
                .filter(frame -> frame.id() == id)
                .mapToDouble(figure)
                .sorted()
                .boxed()
                .toList();
    }

    /** Puts the drawing on the desk and waits until it is seen and measured. */
    private void scene(int marks, int nodes, Dragged dragged) throws InterruptedException {
        on(() -> {
            Thumbnail many = Scenes.thumbnail(marks, nodes, dragged);
            Session session = window.session();
            session.edit(new Edit(
                    Message.of("desk.concept.done"), Edits.thumbnail(session.shown(), t -> t.withMarks(many.marks()))));
            return true;
        });
        settle();
    }

    private void settle() throws InterruptedException {
        int quiet = 0;
        while (quiet < 10) {
            Thread.sleep(100);
            quiet = on(this::isSettled) ? quiet + 1 : 0;
        }
    }

    private boolean isSettled() {
        return window.session().photograph().isPresent() && window.isSettled();
    }

    /** Presses on a node of the dragged mark, moves round a circle and lets go; the edit is taken back. */
    private List<FrameClock.Frame> gesture(int marks, int node, int events, int milliseconds)
            throws InterruptedException {
        Point start = on(() -> nodeInWindow(marks, node));
        post(MouseEvent.MOUSE_PRESSED, start.x, start.y, InputEvent.BUTTON1_DOWN_MASK);
        Thread.sleep(200);
        long next = System.nanoTime();
        for (int i = 1; i <= events; i++) {
            double angle = i * .21;
            int x = start.x + (int) Math.round(CIRCLE * (1 - Math.cos(angle)));
            int y = start.y + (int) Math.round(CIRCLE * Math.sin(angle));
            post(MouseEvent.MOUSE_DRAGGED, x, y, InputEvent.BUTTON1_DOWN_MASK);
            next += milliseconds * 1_000_000L;
            long rest = next - System.nanoTime();
            if (rest > 0) {
                Thread.sleep(rest / 1_000_000, (int) (rest % 1_000_000));
            }
        }
        post(MouseEvent.MOUSE_RELEASED, start.x + 1, start.y, 0);
        settle();
        List<FrameClock.Frame> frames = on(clock::take);
        on(() -> {
            window.session().undo();
            return true;
        });
        settle();
        on(clock::take);
        return frames;
    }

    private void post(int id, int x, int y, int modifiers) {
        int button = id == MouseEvent.MOUSE_DRAGGED ? MouseEvent.NOBUTTON : MouseEvent.BUTTON1;
        clock.postEvent(new FrameClock.Timed(window, id, modifiers, x, y, button));
    }

    private Point nodeInWindow(int marks, int node) {
        NotanCard card = CardPixels.in(window);
        var at = window.session()
                .thumbnail()
                .orElseThrow()
                .marks()
                .get(Scenes.place(marks))
                .outline()
                .nodes()
                .get(node)
                .at();
        Point2D pixel = CardPixels.of(card, at);
        Point inCard = new Point((int) Math.round(pixel.getX()), (int) Math.round(pixel.getY()));
        return SwingUtilities.convertPoint(card, inCard, window);
    }

    private static <T> T on(Callable<T> work) throws InterruptedException {
        FutureTask<T> task = new FutureTask<>(work);
        try {
            EventQueue.invokeAndWait(task);
            return task.get();
        } catch (InvocationTargetException | ExecutionException failure) {
            throw new IllegalStateException(failure);
        }
    }
}
