package umbercard.readings;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import umbercard.door.Limit;
import umbercard.door.Limits;
import umbercard.door.Rule;

/**
 * What the painter wishes of the readings, whatever the study; a study's own wishes lie over them.
 *
 * @param limits the painter's thresholds: reading id, then limit name, to value; what a rule does not know or allow counts as
 *     not there
 * @param silenced ids of the readings that say nothing in any study
 */
public record Wishes(Map<String, Map<String, Double>> limits, Set<String> silenced) {
    /** Everything as it came. */
    public static final Wishes NONE = new Wishes(Map.of(), Set.of());

    public Wishes {
        Map<String, Map<String, Double>> kept = new HashMap<>();
        limits.forEach((reading, values) -> kept.put(reading, Map.copyOf(values)));
        limits = Map.copyOf(kept);
        silenced = Set.copyOf(silenced);
    }

    /** The rule with the painter's thresholds in the place of its defaults. */
    Rule in(Rule rule) {
        Limits own = Limits.of(rule, limits.getOrDefault(rule.id(), Map.of()));
        Map<String, Limit> changed = new HashMap<>();
        rule.limits()
                .forEach((name, limit) ->
                        changed.put(name, new Limit(own.get(name), limit.unit(), limit.least(), limit.most())));
        return new Rule(rule.id(), rule.rank(), changed, rule.source());
    }
}
