package umbercard.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import umbercard.bench.Scenes.Dragged;

/** The times that JMH wrote, those of all rounds together. */
final class Samples {
    /** What was measured. */
    record Key(String what, Method method, int marks, int nodes, Dragged dragged) {}

    /** Times in milliseconds, and how often each was found. */
    static final class Of {
        private final TreeMap<Double, Long> found = new TreeMap<>();
        private long count;

        void add(double time, long times) {
            found.merge(time, times, Long::sum);
            count += times;
        }

        long count() {
            return count;
        }

        /** The least time that at least that share of all did not exceed. */
        double at(double share) {
            long before = 0;
            for (Map.Entry<Double, Long> entry : found.entrySet()) {
                before += entry.getValue();
                if (before >= share * count) {
                    return entry.getKey();
                }
            }
            return found.lastKey();
        }
    }

    private final Map<Key, Of> all = new HashMap<>();

    private Samples() {}

    Optional<Of> of(Key key) {
        return Optional.ofNullable(all.get(key));
    }

    /** Of a run that measured nothing. */
    static Samples none() {
        return new Samples();
    }

    static Samples read(Path file) throws IOException {
        Samples samples = new Samples();
        for (JsonNode result : new ObjectMapper().readTree(file.toFile())) {
            String benchmark = result.get("benchmark").asText();
            JsonNode params = result.get("params");
            Key key = new Key(
                    benchmark.substring(benchmark.lastIndexOf('.') + 1),
                    Method.valueOf(params.get("method").asText()),
                    params.get("marks").asInt(),
                    params.get("nodes").asInt(),
                    Dragged.valueOf(params.get("dragged").asText()));
            addAll(samples.all.computeIfAbsent(key, k -> new Of()), result.get("primaryMetric"));
        }
        return samples;
    }

    /** Adds what JMH tells of one run. */
    static void addAll(Of times, JsonNode metric) {
        if (metric.has("rawDataHistogram")) {
            for (JsonNode fork : metric.get("rawDataHistogram")) {
                for (JsonNode iteration : fork) {
                    iteration.forEach(pair ->
                            times.add(pair.get(0).asDouble(), pair.get(1).asLong()));
                }
            }
        } else {
            for (JsonNode fork : metric.get("rawData")) {
                fork.forEach(time -> times.add(time.asDouble(), 1));
            }
        }
    }
}
