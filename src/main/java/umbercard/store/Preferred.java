package umbercard.store;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.prefs.BackingStoreException;
import java.util.prefs.Preferences;
import java.util.stream.Collectors;
import umbercard.color.ValueScale;

/**
 * What the painter prefers, whatever the study: kept for this user of this machine where Java keeps preferences. What cannot be
 * read there, or was written by another version, is as if it had never been chosen.
 */
public final class Preferred {
    private static final String VALUES = "values";
    private static final String TRUST = "trust-in-value";
    private static final String LIMITS = "limits";
    private static final String SILENCED = "silenced";

    private Preferred() {}

    /** The numbering of values; Munsell's until one is chosen. */
    public static ValueScale values() {
        return ValueScale.find(node().get(VALUES, "")).orElse(ValueScale.MUNSELL);
    }

    /** Keeps the numbering of values for this and every later run. */
    public static void keepValues(ValueScale scale) {
        node().put(VALUES, scale.key());
    }

    /** How far value is trusted when a stick is sought for a color, 0..1; 1, value first, until it is chosen. */
    public static double trust() {
        double kept = node().getDouble(TRUST, 1);
        return kept >= 0 && kept <= 1 ? kept : 1;
    }

    /** Keeps how far value is trusted, 0..1. */
    public static void keepTrust(double trust) {
        node().putDouble(TRUST, trust);
    }

    /** The painter's own thresholds of readings: reading id, then limit name, to value; none until one is chosen. */
    public static Map<String, Map<String, Double>> limits() {
        Map<String, Map<String, Double>> limits = new TreeMap<>();
        kept(LIMITS).forEach((key, written) -> {
            int slash = key.indexOf('/');
            double value = number(written);
            if (slash > 0 && Double.isFinite(value)) {
                limits.computeIfAbsent(key.substring(0, slash), id -> new TreeMap<>())
                        .put(key.substring(slash + 1), value);
            }
        });
        return limits;
    }

    /** Keeps these thresholds, and no others. */
    public static void keepLimits(Map<String, Map<String, Double>> limits) {
        Map<String, String> written = new TreeMap<>();
        limits.forEach(
                (id, values) -> values.forEach((name, value) -> written.put(id + "/" + name, Double.toString(value))));
        keep(LIMITS, written);
    }

    /** The ids of the readings that are silenced in every study; none until one is. */
    public static Set<String> silenced() {
        return new TreeSet<>(kept(SILENCED).keySet());
    }

    /** Silences these readings in every study, and no others. */
    public static void keepSilenced(Set<String> ids) {
        keep(SILENCED, ids.stream().collect(Collectors.toMap(id -> id, id -> "")));
    }

    private static Map<String, String> kept(String folder) {
        Map<String, String> kept = new TreeMap<>();
        try {
            Preferences all = node().node(folder);
            for (String key : all.keys()) {
                kept.put(key, all.get(key, ""));
            }
        } catch (BackingStoreException unreadable) {
            kept.clear();
        }
        return kept;
    }

    /** A key too long for where Java keeps preferences is left out. */
    private static void keep(String folder, Map<String, String> written) {
        Preferences all = node().node(folder);
        kept(folder).keySet().stream().filter(key -> !written.containsKey(key)).forEach(all::remove);
        written.forEach((key, value) -> {
            if (key.length() <= Preferences.MAX_KEY_LENGTH) {
                all.put(key, value);
            }
        });
    }

    private static double number(String written) {
        try {
            return Double.parseDouble(written);
        } catch (NumberFormatException none) {
            return Double.NaN;
        }
    }

    private static Preferences node() {
        return Preferences.userRoot().node("umbercard");
    }
}
