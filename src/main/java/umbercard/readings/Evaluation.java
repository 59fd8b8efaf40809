package umbercard.readings;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import umbercard.door.Finding;
import umbercard.door.Limits;
import umbercard.door.Plan;
import umbercard.door.Ranked;
import umbercard.door.Reading;
import umbercard.door.Rule;
import umbercard.kernel.Plugins;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.notan.Design;
import umbercard.picture.Picture;
import umbercard.words.Message;

/** Takes all the readings of a thumbnail. The desk and the command line share it. */
public final class Evaluation {
    private Evaluation() {}

    /** The readings that the program comes with and those beside it, in the order they are shown. */
    public static Plugins<Reading> find() {
        return Plugins.find(Reading.class, Ranked.ORDER);
    }

    /**
     * What each reading finds, by its id, in the order of {@code readings}. Left out are those that the study silences and
     * those that fail, which are switched off. Once nobody waits any more, what was found so far is returned.
     *
     * @param design what {@code thumbnail} comes to
     * @param reference the framed photograph, if it is at hand
     */
    public static Map<String, Finding> of(
            Plugins<Reading> readings,
            Study study,
            Thumbnail thumbnail,
            Design design,
            Optional<Picture> reference,
            BooleanSupplier stopped) {
        Plan plan = new Plan(study, thumbnail, design, reference, stopped);
        Map<String, Finding> findings = new LinkedHashMap<>();
        for (Reading reading : readings.on()) {
            if (stopped.getAsBoolean()) {
                break;
            }
            readings.ask(reading, Reading::id)
                    .filter(id -> !study.silenced().contains(id))
                    .ifPresent(id -> readings.ask(reading, r -> r.read(plan, limits(r.rule(), study)))
                            .ifPresent(finding -> findings.put(id, finding)));
        }
        return Collections.unmodifiableMap(findings);
    }

    /** The thresholds in force for a rule in a study. */
    public static Limits limits(Rule rule, Study study) {
        return Limits.of(rule, study.limits().getOrDefault(rule.id(), Map.of()));
    }

    /**
     * The rule as a sentence, {@code readings.<id>.rule}, with the thresholds in force: its arguments are their values in the
     * order of the limits' names.
     */
    public static Message said(Rule rule, Study study) {
        Object[] values = new TreeMap<>(limits(rule, study).values()).values().toArray();
        return Message.of("readings." + rule.id() + ".rule", values);
    }
}
