package umbercard.kernel;

/** Keeps slow work off the thread that paints the window. Told by the thread's name, so that no toolkit is needed. */
public final class EventThread {
    private static final String NAME = "AWT-EventQueue";

    private EventThread() {}

    /**
     * Called first by all that decodes, traces, saves or writes.
     *
     * @throws IllegalStateException on the event thread: a defect of the caller
     */
    public static void refuse(String work) {
        if (Thread.currentThread().getName().startsWith(NAME)) {
            throw new IllegalStateException(work + " must not run on the event thread");
        }
    }
}
