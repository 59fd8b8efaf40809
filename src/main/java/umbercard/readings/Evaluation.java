package umbercard.readings;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import umbercard.door.Finding;
import umbercard.door.Limits;
import umbercard.door.Plan;
import umbercard.door.Ranked;
import umbercard.door.Reading;
import umbercard.door.Rule;
import umbercard.kernel.Plugins;
import umbercard.model.Study;

/** Takes all the readings of a thumbnail. The desk and the command line share it. */
public final class Evaluation {
    private Evaluation() {}

    /** The readings that the program comes with and those beside it, in the order they are shown. */
    public static Plugins<Reading> find() {
        return Plugins.find(Reading.class, Ranked.ORDER);
    }

    /**
     * What each reading finds, by its id, in the order of {@code readings}. Left out are those that the study or the painter
     * silences and those that fail, which are switched off. Once nobody waits any more, what was found so far is returned.
     */
    public static Map<String, Finding> of(Plugins<Reading> readings, Plan plan, Wishes wishes) {
        Map<String, Finding> findings = new LinkedHashMap<>();
        for (Reading reading : heard(readings, plan.study(), wishes)) {
            if (plan.stopped().getAsBoolean()) {
                break;
            }
            one(readings, reading, plan, wishes).ifPresent(finding -> findings.put(reading.id(), finding));
        }
        return Collections.unmodifiableMap(findings);
    }

    /** The readings that neither the study nor the painter silences, in their order; one that fails is switched off. */
    public static List<Reading> heard(Plugins<Reading> readings, Study study, Wishes wishes) {
        return readings.on().stream()
                .filter(reading -> readings.ask(reading, Reading::id)
                        .filter(id -> !study.silenced().contains(id)
                                && !wishes.silenced().contains(id))
                        .isPresent())
                .toList();
    }

    /** What one reading finds, silenced or not; empty if it fails, which switches it off. */
    public static Optional<Finding> one(Plugins<Reading> readings, Reading reading, Plan plan, Wishes wishes) {
        return readings.ask(reading, r -> r.read(plan, limits(r.rule(), plan.study(), wishes)));
    }

    /**
     * The thresholds in force for a rule: its defaults, under the painter's, under the study's. A value that the rule does not
     * allow leaves the one below in force.
     */
    public static Limits limits(Rule rule, Study study, Wishes wishes) {
        return Limits.of(wishes.in(rule), study.limits().getOrDefault(rule.id(), Map.of()));
    }
}
