package umbercard.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;

class LatestTest {
    private final BlockingQueue<String> delivered = new LinkedBlockingQueue<>();
    private final BlockingQueue<Integer> begun = new LinkedBlockingQueue<>();

    private String next() throws InterruptedException {
        String answer = delivered.poll(10, TimeUnit.SECONDS);
        return answer == null ? "nothing came" : answer;
    }

    private Latest<Integer, String> heldBy(CountDownLatch hold) {
        return new Latest<>(
                "test",
                (question, stopped) -> {
                    begun.add(question);
                    await(hold);
                    return question + (stopped.getAsBoolean() ? " stopped" : "");
                },
                delivered::add,
                Runnable::run);
    }

    private static void await(CountDownLatch hold) {
        try {
            assertThat(hold.await(10, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException interrupted) {
            throw new IllegalStateException(interrupted);
        }
    }

    @Test
    void answersOnAThreadOfItsOwn() throws InterruptedException {
        Latest<Integer, String> latest = new Latest<>(
                "by itself", (question, stopped) -> Thread.currentThread().getName(), delivered::add, Runnable::run);

        latest.ask(1);

        assertThat(next()).isEqualTo("by itself");
    }

    @Test
    void questionsThatWaitAreLeftOutForTheNewest() throws InterruptedException {
        CountDownLatch hold = new CountDownLatch(1);
        Latest<Integer, String> latest = heldBy(hold);
        latest.ask(1);
        assertThat(begun.poll(10, TimeUnit.SECONDS)).isEqualTo(1);

        List.of(2, 3, 4).forEach(latest::ask);
        hold.countDown();

        assertThat(next()).isEqualTo("4");
        assertThat(begun).containsExactly(4);
        assertThat(delivered).isEmpty();
    }

    @Test
    void noTwoInARowAreStopped() throws InterruptedException {
        BlockingQueue<BooleanSupplier> asked = new LinkedBlockingQueue<>();
        CountDownLatch first = new CountDownLatch(1);
        CountDownLatch second = new CountDownLatch(1);
        Latest<CountDownLatch, String> latest = new Latest<>(
                "test",
                (hold, stopped) -> {
                    asked.add(stopped);
                    await(hold);
                    return hold == first ? "first" : "second";
                },
                delivered::add,
                Runnable::run);
        latest.ask(first);
        BooleanSupplier firstStopped = asked.take();
        latest.ask(second);
        assertThat(firstStopped.getAsBoolean()).isTrue();
        first.countDown();
        BooleanSupplier secondStopped = asked.take();
        latest.ask(new CountDownLatch(0));
        assertThat(secondStopped.getAsBoolean()).isFalse();
        second.countDown();

        assertThat(next()).isEqualTo("second");
    }

    @Test
    void afterAFailureTheNextQuestionIsAnswered() throws InterruptedException {
        Latest<Integer, String> latest = new Latest<>(
                "test",
                (question, stopped) -> {
                    begun.add(question);
                    if (question == 1) {
                        throw new IllegalStateException("on purpose");
                    }
                    return "answer";
                },
                delivered::add,
                Runnable::run);
        latest.ask(1);
        assertThat(begun.poll(10, TimeUnit.SECONDS)).isEqualTo(1);

        latest.ask(2);

        assertThat(next()).isEqualTo("answer");
    }
}
