package umbercard.desk.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import umbercard.desk.KilnHill;
import umbercard.door.Figure;
import umbercard.door.Finding;
import umbercard.door.Limits;
import umbercard.door.Plan;
import umbercard.door.Reading;
import umbercard.door.Rule;
import umbercard.kernel.Plugins;
import umbercard.model.Study;
import umbercard.picture.Picture;
import umbercard.readings.Evaluation;
import umbercard.readings.Wishes;
import umbercard.words.Message;

class MeasuringTest {
    /** Longer than a frame, whatever the machine. */
    private static final long LONG = 2 * Measuring.FRAME / 1_000_000;

    private final List<String> taken = new ArrayList<>();
    private final List<Measured> meanwhile = new ArrayList<>();

    private record Told(String id, int rank, Consumer<Plan> work) implements Reading {
        @Override
        public Rule rule() {
            return new Rule(id, rank, Map.of(), "none");
        }

        @Override
        public Finding read(Plan plan, Limits limits) {
            work.accept(plan);
            return new Finding(Finding.Verdict.HOLDS, List.of(), Message.of("readings.one-value"), List.of());
        }
    }

    private Told told(String id, int rank, Consumer<Plan> work) {
        return new Told(id, rank, plan -> {
            taken.add(id);
            work.accept(plan);
        });
    }

    private static void dawdle() {
        try {
            Thread.sleep(LONG);
        } catch (InterruptedException interrupted) {
            throw new IllegalStateException(interrupted);
        }
    }

    private static Question question(Optional<Picture> photograph) {
        Study study = KilnHill.beforePhotograph();
        return new Question(study, study.thumbnails().get(0), Wishes.NONE, photograph);
    }

    private Measuring measuring(Reading... readings) {
        return new Measuring(Plugins.of(List.of(readings)), meanwhile::add);
    }

    private Measured answer(Measuring measuring, boolean all) {
        taken.clear();
        meanwhile.clear();
        return measuring.answer(question(Optional.empty()), all, () -> false);
    }

    @Test
    void oneThatTakesLongComesLastOnceThatIsKnown() {
        Measuring measuring = measuring(told("a", 1, p -> {}), told("slow", 2, p -> dawdle()), told("b", 3, p -> {}));
        answer(measuring, true);
        assertThat(taken).containsExactly("a", "slow", "b");
        answer(measuring, true);
        Measured all = answer(measuring, true);
        assertThat(taken).containsExactly("a", "b", "slow");
        assertThat(all.findings()).containsOnlyKeys("a", "b", "slow");
        assertThat(all.waiting()).isEmpty();
        assertThat(all.slow()).isTrue();
        assertThat(meanwhile).singleElement().satisfies(told -> {
            assertThat(told.findings()).containsOnlyKeys("a", "b");
            assertThat(told.waiting()).containsExactly("slow");
        });
    }

    @Test
    void whileTheHandMovesThoseThatTakeLongAreLeftWaiting() {
        Measuring measuring = measuring(told("slow", 1, p -> dawdle()), told("a", 2, p -> {}));
        answer(measuring, true);
        answer(measuring, true);
        Measured quick = answer(measuring, false);
        assertThat(taken).containsExactly("a");
        assertThat(quick.waiting()).containsExactly("slow");
        assertThat(quick.slow()).isTrue();
    }

    @Test
    void whatIsFoundIsToldOnceAFrameHasPassed() {
        Measuring measuring = measuring(told("first", 1, p -> dawdle()), told("second", 2, p -> {}));
        answer(measuring, true);
        assertThat(meanwhile)
                .singleElement()
                .satisfies(told -> assertThat(told.waiting()).containsExactly("second"));
    }

    @Test
    void onceIsNotSlowAndOneThatWasSlowIsQuickAgainOnceItIs() {
        AtomicBoolean slow = new AtomicBoolean(true);
        Reading changes = told("changes", 1, p -> {
            if (slow.get()) {
                dawdle();
            }
        });
        Measuring measuring = measuring(changes, told("a", 2, p -> {}));
        answer(measuring, true);
        answer(measuring, true);
        assertThat(taken).as("slow once").containsExactly("changes", "a");
        slow.set(false);
        answer(measuring, true);
        assertThat(taken).as("slow twice").containsExactly("a", "changes");
        answer(measuring, true);
        assertThat(taken).as("quick again").containsExactly("changes", "a");
    }

    @Test
    void onceNobodyWaitsNothingIsTold() {
        AtomicBoolean stopped = new AtomicBoolean();
        Measuring measuring = measuring(
                told("slow", 1, p -> {
                    dawdle();
                    stopped.set(true);
                }),
                told("b", 2, p -> {}));
        Measured cut = measuring.answer(question(Optional.empty()), true, stopped::get);
        assertThat(taken).containsExactly("slow");
        assertThat(cut.findings()).isEmpty();
        assertThat(meanwhile).isEmpty();
    }

    @Test
    void silencedOnesAreNotTaken() {
        Measuring measuring = measuring(told("a", 1, p -> {}), told("b", 2, p -> {}));
        Question asked = question(Optional.empty());
        Wishes quiet = new Wishes(Map.of(), java.util.Set.of("a"));
        measuring.answer(new Question(asked.study(), asked.thumbnail(), quiet, Optional.empty()), true, () -> false);
        assertThat(taken).containsExactly("b");
    }

    /** The photograph is dark in its left half; by how far the thumbnail agrees is the reading's own test. */
    @Test
    void theFramedPhotographIsHandedOn() {
        Measuring measuring = new Measuring(Evaluation.find(), told -> {});
        Measured with = measuring.answer(question(Optional.of(KilnHill.photograph())), true, () -> false);
        assertThat(with.findings().get("reference-agreement"))
                .extracting(Finding::figures)
                .asInstanceOf(org.assertj.core.api.InstanceOfAssertFactories.list(Figure.class))
                .singleElement()
                .extracting(Figure::name)
                .isEqualTo("agreement");
        Measured without = measuring.answer(question(Optional.empty()), true, () -> false);
        assertThat(without.findings().get("reference-agreement").verdict()).isEqualTo(Finding.Verdict.NOT_SET);
    }
}
