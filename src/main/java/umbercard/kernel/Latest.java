package umbercard.kernel;

import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * Answers questions one at a time on a thread of its own, and only the newest: a question still waiting when another is
 * asked is never worked on, and one under way may stop. No two in a row are stopped, though, so that answers keep coming
 * while questions pour in. Answers are delivered in the order of their questions.
 *
 * @param <Q> the questions
 * @param <A> the answers
 */
public final class Latest<Q, A> {
    private static final Logger LOG = Logger.getLogger(Latest.class.getName());

    /** The work on one question. */
    public interface Work<Q, A> {
        /**
         * Answers on the background thread.
         *
         * @param stopped whether a newer question waits; the answer may then be anything
         */
        A answer(Q question, BooleanSupplier stopped);
    }

    private final AtomicLong newest = new AtomicLong();
    private final ExecutorService worker;
    private final Work<Q, A> work;
    private final Consumer<A> deliver;
    private final Executor deliverOn;
    private boolean stoppedLast;

    /**
     * Starts no thread until something is asked, and keeps none that is idle.
     *
     * @param name of the thread
     * @param deliverOn where answers are delivered, for example the event thread
     */
    public Latest(String name, Work<Q, A> work, Consumer<A> deliver, Executor deliverOn) {
        this.work = work;
        this.deliver = deliver;
        this.deliverOn = deliverOn;
        ThreadPoolExecutor one =
                new ThreadPoolExecutor(1, 1, 2, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), task -> {
                    Thread thread = new Thread(task, name);
                    thread.setDaemon(true);
                    return thread;
                });
        one.allowCoreThreadTimeOut(true);
        this.worker = one;
    }

    /** Asks; returns at once. */
    public void ask(Q question) {
        long number = newest.incrementAndGet();
        worker.execute(() -> answer(question, number));
    }

    private boolean overtaken(long number) {
        return newest.get() != number;
    }

    private void answer(Q question, long number) {
        if (overtaken(number)) {
            return;
        }
        boolean mayStop = !stoppedLast;
        try {
            A answer = work.answer(question, () -> mayStop && overtaken(number));
            stoppedLast = mayStop && overtaken(number);
            if (!stoppedLast) {
                deliverOn.execute(() -> deliver.accept(answer));
            }
        } catch (RuntimeException failure) {
            LOG.log(Level.WARNING, "no answer", failure);
        }
    }
}
