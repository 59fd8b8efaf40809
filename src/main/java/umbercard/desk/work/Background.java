package umbercard.desk.work;

import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import umbercard.words.Message;

/**
 * Does one long piece of work after the other on a thread of its own and hands each result back on the event thread. Each
 * is shown while it lasts and can be stopped.
 */
public final class Background {
    /** A piece of work. It polls {@code task.stopped()} and tells how far it is. */
    @FunctionalInterface
    public interface Work<T> {
        T run(Task task) throws Exception;
    }

    /** Shows the work under way; called on the event thread. */
    public interface Watch {
        void started(Task task);

        void progressed(Task task);

        void ended(Task task);
    }

    private final ExecutorService thread = Executors.newSingleThreadExecutor(work -> {
        Thread made = new Thread(work, "umbercard-work");
        made.setDaemon(true);
        return made;
    });
    private final AtomicInteger waiting = new AtomicInteger();
    private final Watch watch;

    public Background(Watch watch) {
        this.watch = watch;
    }

    /**
     * Does the work, then calls one of the two on the event thread; neither, if the work heeded that it was stopped and
     * threw a {@link CancellationException}. An {@link Error} is handed on as the cause of an {@link ExecutionException}.
     *
     * @param name what it is called while it lasts
     */
    public <T> Task run(Message name, Work<T> work, Consumer<T> done, Consumer<Exception> failed) {
        Task task = new Task(name, changed -> SwingUtilities.invokeLater(() -> watch.progressed(changed)));
        waiting.incrementAndGet();
        thread.execute(() -> {
            SwingUtilities.invokeLater(() -> watch.started(task));
            Runnable outcome = outcome(task, work, done, failed);
            SwingUtilities.invokeLater(() -> {
                watch.ended(task);
                waiting.decrementAndGet();
                outcome.run();
            });
        });
        return task;
    }

    private static <T> Runnable outcome(Task task, Work<T> work, Consumer<T> done, Consumer<Exception> failed) {
        try {
            T result = work.run(task);
            return () -> done.accept(result);
        } catch (CancellationException stopped) {
            return () -> {};
        } catch (Exception failure) {
            return () -> failed.accept(failure);
        } catch (OutOfMemoryError | StackOverflowError | LinkageError error) {
            return () -> failed.accept(new ExecutionException(error));
        }
    }

    /** Calls {@code then} on the event thread after all that is under way or waiting now. */
    public void afterAll(Message name, Runnable then) {
        run(name, task -> task, task -> then.run(), failure -> then.run());
    }

    /** Whether nothing is under way or waiting. */
    public boolean isIdle() {
        return waiting.get() == 0;
    }
}
