package umbercard.desk;

import java.awt.AWTEvent;
import java.awt.Component;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.awt.event.InvocationEvent;
import java.awt.event.MouseEvent;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.List;
import javax.swing.RepaintManager;

/**
 * An event queue that times the frames of a gesture: from when a pointer event of the window is dispatched until all that it
 * caused on the event thread is painted and on the screen.
 */
final class FrameClock extends EventQueue {
    /**
     * Milliseconds of one frame.
     *
     * @param waited from when the event was posted until it was dispatched
     * @param took from when it was dispatched until all was painted
     * @param cpu how much of that the event thread was at work, and not waiting for a processor or the display
     */
    record Frame(int id, double waited, double took, double cpu) {}

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private final Component window;
    private final List<Frame> frames = new ArrayList<>();
    private double longestOther;

    FrameClock(Component window) {
        this.window = window;
    }

    /** A pointer event that knows when it was posted. */
    static final class Timed extends MouseEvent {
        private final transient long posted = System.nanoTime();

        Timed(Component window, int id, int modifiers, int x, int y, int button) {
            super(window, id, System.currentTimeMillis(), modifiers, x, y, id == MOUSE_DRAGGED ? 0 : 1, false, button);
        }
    }

    @Override
    protected void dispatchEvent(AWTEvent event) {
        long start = System.nanoTime();
        long cpu = THREADS.getCurrentThreadCpuTime();
        super.dispatchEvent(event);
        if (event instanceof Timed timed) {
            postEvent(new InvocationEvent(this, () -> painted(timed, start, cpu)));
        } else {
            longestOther = Math.max(longestOther, (System.nanoTime() - start) / 1e6);
        }
    }

    private void painted(Timed event, long start, long cpu) {
        RepaintManager.currentManager(window).paintDirtyRegions();
        Toolkit.getDefaultToolkit().sync();
        frames.add(new Frame(
                event.getID(),
                (start - event.posted) / 1e6,
                (System.nanoTime() - start) / 1e6,
                (THREADS.getCurrentThreadCpuTime() - cpu) / 1e6));
    }

    /** The frames since last asked; on the event thread. */
    List<Frame> take() {
        List<Frame> taken = List.copyOf(frames);
        frames.clear();
        return taken;
    }

    /** The longest that any other event kept the event thread since last asked, in milliseconds; on the event thread. */
    double takeLongestOther() {
        double longest = longestOther;
        longestOther = 0;
        return longest;
    }
}
