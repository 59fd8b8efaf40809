package umbercard.door;

import java.util.HashMap;
import java.util.Map;

/** The thresholds in force for one reading: the defaults, under the painter's, under the study's. */
public record Limits(Map<String, Double> values) {
    public Limits {
        values = Map.copyOf(values);
    }

    /** The rule's own, as changed by {@code changes}; unknown names and values out of range are left out. */
    public static Limits of(Rule rule, Map<String, Double> changes) {
        Map<String, Double> values = new HashMap<>();
        rule.limits().forEach((name, limit) -> {
            double value = changes.getOrDefault(name, limit.value());
            values.put(name, value >= limit.least() && value <= limit.most() ? value : limit.value());
        });
        return new Limits(values);
    }

    /**
     * The threshold of that name.
     *
     * @throws IllegalArgumentException if the rule has no limit of that name: a defect of the reading
     */
    public double get(String name) {
        Double value = values.get(name);
        if (value == null) {
            throw new IllegalArgumentException("no limit named " + name);
        }
        return value;
    }
}
