package umbercard.desk.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import umbercard.words.Message;

class BackgroundTest {
    private static final Message NAME = Message.of("desk.work.cards");

    private final BlockingQueue<String> told = new LinkedBlockingQueue<>();
    private final Background background = new Background(new Background.Watch() {
        @Override
        public void started(Task task) {
            told.add("started");
        }

        @Override
        public void progressed(Task task) {
            told.add("at " + task.share());
        }

        @Override
        public void ended(Task task) {
            told.add("ended");
        }
    });

    private String next() throws InterruptedException {
        return told.poll(10, TimeUnit.SECONDS);
    }

    @Test
    void theResultComesBackOnTheEventThreadAfterProgress() throws Exception {
        background.run(
                NAME,
                task -> {
                    task.at(0.5);
                    return Thread.currentThread().getName();
                },
                thread -> told.add(thread + " then " + SwingUtilities.isEventDispatchThread()),
                failure -> told.add("failed"));
        assertThat(next()).isEqualTo("started");
        assertThat(next()).isEqualTo("at 0.5");
        assertThat(next()).isEqualTo("ended");
        assertThat(next()).isEqualTo("umbercard-work then true");
    }

    @Test
    void aFailureIsHandedOn() throws Exception {
        background.run(
                NAME,
                task -> {
                    throw new IOException("broken on purpose");
                },
                done -> told.add("done"),
                failure -> told.add(failure.getMessage()));
        assertThat(next()).isEqualTo("started");
        assertThat(next()).isEqualTo("ended");
        assertThat(next()).isEqualTo("broken on purpose");
    }

    @Test
    void workThatHeedsItsStopCallsNeither() throws Exception {
        CountDownLatch goOn = new CountDownLatch(1);
        Task task = background.run(
                NAME,
                under -> {
                    goOn.await();
                    if (under.stopped()) {
                        throw new CancellationException();
                    }
                    return "went on";
                },
                done -> told.add("done"),
                failure -> told.add("failed"));
        assertThat(next()).isEqualTo("started");
        task.stop();
        goOn.countDown();
        assertThat(next()).isEqualTo("ended");
        SwingUtilities.invokeAndWait(() -> assertThat(background.isIdle()).isTrue());
        assertThat(told).isEmpty();
    }

    @Test
    void workThatFinishesAllTheSameHandsItsResultOn() throws Exception {
        CountDownLatch goOn = new CountDownLatch(1);
        Task task = background.run(
                NAME,
                under -> {
                    goOn.await();
                    return "saved";
                },
                told::add,
                failure -> told.add("failed"));
        assertThat(next()).isEqualTo("started");
        task.stop();
        goOn.countDown();
        assertThat(next()).isEqualTo("ended");
        assertThat(next()).isEqualTo("saved");
    }

    @Test
    void anErrorEndsTheWorkAndIsHandedOn() throws Exception {
        background.run(
                NAME,
                task -> {
                    throw new OutOfMemoryError("broken on purpose");
                },
                done -> told.add("done"),
                failure -> told.add(failure.getCause().getMessage()));
        assertThat(next()).isEqualTo("started");
        assertThat(next()).isEqualTo("ended");
        assertThat(next()).isEqualTo("broken on purpose");
        SwingUtilities.invokeAndWait(() -> assertThat(background.isIdle()).isTrue());
    }

    @Test
    void whatComesAfterAllComesLast() throws Exception {
        background.run(NAME, task -> "first", told::add, failure -> told.add("failed"));
        background.afterAll(NAME, () -> told.add("last"));
        for (String expected : List.of("started", "ended", "first", "started", "ended", "last")) {
            assertThat(next()).isEqualTo(expected);
        }
    }
}
