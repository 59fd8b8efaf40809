package umbercard.desk.ledger;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import umbercard.door.Finding;
import umbercard.door.Plan;
import umbercard.door.Reading;
import umbercard.geometry.Masses;
import umbercard.kernel.Plugins;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.notan.Design;
import umbercard.notan.FoldCache;
import umbercard.photo.FramedReference;
import umbercard.photo.FramedZones;
import umbercard.picture.Picture;
import umbercard.readings.Evaluation;

/**
 * Takes the readings: first those that are quick, then those that took longer than a frame the last two times; once may be a
 * first run's doing. What is found is told before the first that takes long, and whenever a frame has passed. A reading that asks for the masses is charged with
 * counting them, although only the first to ask waits for it: otherwise the readings of masses would take turns at seeming
 * quick. For one background thread.
 */
final class Measuring {
    /** A frame, in nanoseconds. */
    static final long FRAME = 16_000_000;

    private final Plugins<Reading> readings;
    private final Consumer<Measured> meanwhile;
    private final FoldCache folds = new FoldCache();
    private final FramedReference framed = new FramedReference();
    private final FramedZones zones = new FramedZones();
    private final Set<String> longLast = new HashSet<>();
    private final Set<String> slow = new HashSet<>();

    /** @param meanwhile told on the same thread what is found before all is */
    Measuring(Plugins<Reading> readings, Consumer<Measured> meanwhile) {
        this.readings = readings;
        this.meanwhile = meanwhile;
    }

    /**
     * Answers a question; once nobody waits any more, with anything.
     *
     * @param all whether those that take long are taken too; they are left waiting otherwise
     */
    Measured answer(Question question, boolean all, BooleanSupplier stopped) {
        return new Run(question, stopped).take(all);
    }

    private boolean isSlow(Reading reading) {
        return slow.contains(reading.id());
    }

    private void took(String id, long nanoseconds) {
        if (nanoseconds <= FRAME) {
            longLast.remove(id);
            slow.remove(id);
        } else if (!longLast.add(id)) {
            slow.add(id);
        }
    }

    private final class Run {
        private final long begun = System.nanoTime();
        private final Question question;
        private final Timed counting;
        private final Plan plan;
        private final Map<String, Finding> found = new HashMap<>();
        private final List<Reading> waiting;
        private long told = begun;
        private boolean news;
        private long quick;
        private boolean amongSlow;

        Run(Question question, BooleanSupplier stopped) {
            this.question = question;
            Study study = question.study();
            Thumbnail thumbnail = question.thumbnail();
            Design design = folds.of(thumbnail, study.ratio());
            Optional<Picture> reference =
                    question.photograph().flatMap(photograph -> framed.of(study, thumbnail, photograph));
            Plan untimed = new Plan(study, thumbnail, design, reference, stopped)
                    .withColors(() -> zones.colors(thumbnail, study, question.photograph()));
            counting = new Timed(untimed.counted());
            plan = untimed.withMasses(counting);
            waiting = new ArrayList<>(Evaluation.heard(readings, study, question.wishes()));
            waiting.sort(Comparator.comparing(Measuring.this::isSlow));
        }

        Measured take(boolean all) {
            while (!waiting.isEmpty() && !plan.stopped().getAsBoolean()) {
                boolean firstSlow = !amongSlow && isSlow(waiting.get(0));
                amongSlow |= firstSlow;
                if (!amongSlow || firstSlow) {
                    quick = System.nanoTime() - begun;
                }
                if (amongSlow && !all) {
                    break;
                }
                tellIf(firstSlow);
                take(waiting.get(0));
            }
            quick = amongSlow ? quick : System.nanoTime() - begun;
            return soFar();
        }

        private void tellIf(boolean firstSlow) {
            if (news && (firstSlow || System.nanoTime() - told > FRAME)) {
                meanwhile.accept(soFar());
                told = System.nanoTime();
                news = false;
            }
        }

        private void take(Reading reading) {
            long before = System.nanoTime();
            counting.asked = false;
            Optional<Finding> finding = Evaluation.one(readings, reading, plan, question.wishes());
            if (plan.stopped().getAsBoolean()) {
                return;
            }
            long took = Math.max(System.nanoTime() - before, counting.asked ? counting.longest : 0);
            took(reading.id(), took);
            finding.ifPresent(one -> found.put(reading.id(), one));
            news = true;
            waiting.remove(0);
        }

        private Measured soFar() {
            return new Measured(question, Map.copyOf(found), ids(waiting), quick / 1_000_000, amongSlow);
        }
    }

    private static Set<String> ids(Collection<Reading> readings) {
        return readings.stream().map(Reading::id).collect(Collectors.toUnmodifiableSet());
    }

    /** Counts masses, and how long it takes, in nanoseconds. */
    private static final class Timed implements Supplier<Masses> {
        private final Supplier<Masses> counted;
        private boolean asked;
        private long longest;

        Timed(Supplier<Masses> counted) {
            this.counted = counted;
        }

        @Override
        public Masses get() {
            long before = System.nanoTime();
            Masses masses = counted.get();
            longest = Math.max(longest, System.nanoTime() - before);
            asked = true;
            return masses;
        }
    }
}
