package umbercard.door;

import java.util.Collection;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * What a remedy is tried on: a thumbnail, what the readings found in it, and what is known of the photograph.
 *
 * @param findings by the id of their reading
 * @param limits the thresholds in force for a rule
 * @param photographRatio width divided by height of the upright photograph; empty without one or where it is not at hand
 */
public record Trial(
        Plan plan, Map<String, Finding> findings, Function<Rule, Limits> limits, OptionalDouble photographRatio) {
    public Trial {
        findings = Map.copyOf(findings);
    }

    /** Whether one of these readings says to look again. */
    public boolean isAgain(Collection<String> readings) {
        return findings.entrySet().stream()
                .anyMatch(found ->
                        readings.contains(found.getKey()) && found.getValue().verdict() == Finding.Verdict.LOOK_AGAIN);
    }
}
