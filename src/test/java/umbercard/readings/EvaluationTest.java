package umbercard.readings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import umbercard.color.ValueScale;
import umbercard.door.Finding;
import umbercard.door.Finding.Verdict;
import umbercard.door.Limit;
import umbercard.door.Limits;
import umbercard.door.Plan;
import umbercard.door.Reading;
import umbercard.door.Rule;
import umbercard.kernel.Plugins;
import umbercard.model.Study;
import umbercard.notan.Design;
import umbercard.notan.Fold;
import umbercard.words.Message;
import umbercard.words.Words;

class EvaluationTest {
    private static final Finding FOUND =
            new Finding(Verdict.HOLDS, List.of(), Message.of("readings.dark-share.not-set"), List.of());

    private static Reading reading(String id, Supplier<Finding> finding) {
        return new Reading() {
            @Override
            public Rule rule() {
                return new Rule(id, 1, Map.of("one", new Limit(1, "count", 0, 9)), "made up");
            }

            @Override
            public Finding read(Plan plan, Limits limits) {
                return finding.get();
            }
        };
    }

    private static Map<String, Finding> take(Plugins<Reading> readings, Study study) {
        return Evaluation.of(readings, Plans.plan(study, Plans.dark(0.3)), Wishes.NONE);
    }

    private static Design design() {
        return Fold.of(Plans.dark(0.3), Plans.RATIO);
    }

    @Test
    void theProgramsOwnAreFoundInTheOrderOfTheirRanks() {
        assertThat(take(Evaluation.find(), Plans.study()).keySet()).containsSubsequence("dark-share", "horizon-height");
        assertThat(Evaluation.find().on()).isSortedAccordingTo((a, b) -> Integer.compare(a.rank(), b.rank()));
    }

    @Test
    void silencedOnesAreLeftOut() {
        Study study = Plans.study().withSilenced(Set.of("dark-share"));
        assertThat(take(Evaluation.find(), study))
                .doesNotContainKey("dark-share")
                .containsKey("horizon-height");
    }

    @Test
    void oneThatFailsIsSwitchedOffAndTheRestGoOn() {
        Plugins<Reading> readings = Plugins.of(List.of(
                reading("breaks", () -> {
                    throw new IllegalStateException("on purpose");
                }),
                reading("misses-a-class", () -> {
                    throw new NoClassDefFoundError("on/purpose");
                }),
                reading("works", () -> FOUND)));
        assertThat(take(readings, Plans.study())).containsOnlyKeys("works");
        assertThat(readings.switchedOff()).hasSize(2);
        assertThat(readings.on()).hasSize(1);
    }

    @Test
    void onceNobodyWaitsNoFurtherReadingIsTaken() {
        AtomicInteger asked = new AtomicInteger();
        Plugins<Reading> readings = Plugins.of(List.of(
                reading("first", () -> {
                    asked.incrementAndGet();
                    return FOUND;
                }),
                reading("second", () -> FOUND)));
        Map<String, Finding> findings = Evaluation.of(
                readings,
                new Plan(Plans.study(), Plans.dark(0.3), design(), Optional.empty(), () -> asked.get() > 0),
                Wishes.NONE);
        assertThat(findings).containsOnlyKeys("first");
    }

    @Test
    void aStudysLimitsLieOverTheDefaults() {
        Rule rule = reading("limited", () -> FOUND).rule();
        assertThat(Evaluation.limits(rule, Plans.study(), Wishes.NONE).get("one"))
                .isEqualTo(1);
        Study own = Plans.study().withLimits(Map.of("limited", Map.of("one", 3.0), "other", Map.of("one", 4.0)));
        assertThat(Evaluation.limits(rule, own, Wishes.NONE).get("one")).isEqualTo(3);
        Study beyond = Plans.study().withLimits(Map.of("limited", Map.of("one", 10.0)));
        assertThat(Evaluation.limits(rule, beyond, Wishes.NONE).get("one")).isEqualTo(1);
    }

    @Test
    void thePaintersLimitsLieOverTheDefaultsAndUnderTheStudys() {
        Rule rule = reading("limited", () -> FOUND).rule();
        Wishes painter = new Wishes(Map.of("limited", Map.of("one", 5.0, "two", 6.0)), Set.of());
        assertThat(Evaluation.limits(rule, Plans.study(), painter).values()).isEqualTo(Map.of("one", 5.0));
        Study own = Plans.study().withLimits(Map.of("limited", Map.of("one", 3.0)));
        assertThat(Evaluation.limits(rule, own, painter).get("one")).isEqualTo(3);
        Study beyond = Plans.study().withLimits(Map.of("limited", Map.of("one", 10.0)));
        assertThat(Evaluation.limits(rule, beyond, painter).get("one"))
                .as("a value the rule does not allow leaves the painter's")
                .isEqualTo(5);
        Wishes absurd = new Wishes(Map.of("limited", Map.of("one", -1.0)), Set.of());
        assertThat(Evaluation.limits(rule, Plans.study(), absurd).get("one")).isEqualTo(1);
    }

    @Test
    void thePaintersLimitsDecideTheVerdict() {
        Wishes lenient = new Wishes(Map.of("dark-share", Map.of("even", 0.0)), Set.of());
        Plan even = Plans.plan(Plans.study(), Plans.dark(0.52));
        assertThat(Evaluation.of(Evaluation.find(), even, Wishes.NONE).get("dark-share"))
                .extracting(Finding::verdict)
                .isEqualTo(Verdict.LOOK_AGAIN);
        assertThat(Evaluation.of(Evaluation.find(), even, lenient).get("dark-share"))
                .extracting(Finding::verdict)
                .isEqualTo(Verdict.HOLDS);
    }

    @Test
    void whatThePainterSilencesIsLeftOutToo() {
        Wishes quiet = new Wishes(Map.of(), Set.of("horizon-height"));
        Study study = Plans.study().withSilenced(Set.of("dark-share"));
        assertThat(Evaluation.of(Evaluation.find(), Plans.plan(study, Plans.dark(0.3)), quiet))
                .doesNotContainKeys("dark-share", "horizon-height")
                .containsKey("balance");
    }

    @Test
    void theRuleIsSaidWithTheLimitsInForce() {
        Study own = Plans.study().withLimits(Map.of("dark-share", Map.of("even", 0.08)));
        List<String> rules = Evaluation.find().on().stream()
                .map(reading -> RuleWords.sentence(
                        reading.rule(), Evaluation.limits(reading.rule(), own, Wishes.NONE), ValueScale.MUNSELL))
                .toList();
        assertThat(rules)
                .contains(
                        "Look again within 0.08 of one half, below 0.1 or above 0.9"
                                + " (in night or snow below 0.05 or above 0.95).",
                        "Look again within 0.05 of the middle; a horizon over water or plain also when it tilts"
                                + " more than 0.5°.");
    }

    @Test
    void everyReadingHasItsNameItsSourceAndLimitsWithinTheirRange() {
        for (Reading reading : Evaluation.find().on()) {
            Rule rule = reading.rule();
            assertThat(Words.say("readings." + rule.id() + ".name")).isNotBlank();
            assertThat(rule.source()).isNotBlank();
            assertThat(rule.limits())
                    .allSatisfy((name, limit) -> assertThat(limit.value()).isBetween(limit.least(), limit.most()));
        }
    }
}
