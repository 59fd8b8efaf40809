package umbercard.door;

import java.util.Map;

/**
 * What a reading holds a thumbnail against.
 *
 * @param id lower-case words with hyphens; also the key of its words, {@code readings.<id>.…}
 * @param rank lower ones are shown first
 * @param limits its thresholds by name, with their defaults
 * @param source where the rule comes from
 */
public record Rule(String id, int rank, Map<String, Limit> limits, String source) {
    public Rule {
        limits = Map.copyOf(limits);
    }
}
