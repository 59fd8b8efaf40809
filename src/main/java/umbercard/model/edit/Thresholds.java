package umbercard.model.edit;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import umbercard.model.Study;

/** Changes of what a study asks of the readings, each a pure function. A reading is named by its id. */
public final class Thresholds {
    private Thresholds() {}

    /** Gives one limit of a reading a value for this study. */
    public static UnaryOperator<Study> limit(String reading, String name, double value) {
        return study -> study.withLimits(with(study.limits(), reading, name, value));
    }

    /** Lets a reading say nothing in this study, or lets it speak again. */
    public static UnaryOperator<Study> silence(String reading, boolean silent) {
        return study -> study.withSilenced(with(study.silenced(), reading, silent));
    }

    /** Takes back what the study asks of one reading. */
    public static UnaryOperator<Study> reset(String reading) {
        return study ->
                study.withLimits(without(study.limits(), reading)).withSilenced(with(study.silenced(), reading, false));
    }

    /** Takes back what the study asks of all readings. */
    public static UnaryOperator<Study> resetAll() {
        return study -> study.withLimits(Map.of()).withSilenced(Set.of());
    }

    /** Limits with one more value. */
    public static Map<String, Map<String, Double>> with(
            Map<String, Map<String, Double>> limits, String reading, String name, double value) {
        Map<String, Map<String, Double>> all = new TreeMap<>(limits);
        Map<String, Double> own = new TreeMap<>(all.getOrDefault(reading, Map.of()));
        own.put(name, value);
        all.put(reading, own);
        return all;
    }

    /** Limits without those of one reading. */
    public static Map<String, Map<String, Double>> without(Map<String, Map<String, Double>> limits, String reading) {
        Map<String, Map<String, Double>> rest = new TreeMap<>(limits);
        rest.remove(reading);
        return rest;
    }

    /** The silenced with one more or one less. */
    public static Set<String> with(Set<String> silenced, String reading, boolean silent) {
        Set<String> all = new TreeSet<>(silenced);
        if (silent) {
            all.add(reading);
        } else {
            all.remove(reading);
        }
        return all;
    }
}
