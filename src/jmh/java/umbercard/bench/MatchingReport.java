package umbercard.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The part of the page that tells what it costs to find sticks for a study. */
final class MatchingReport {
    private static final String PLAINLY = "matchPlainly";

    /** In milliseconds. */
    private static final double FRAME = 16.7;

    private static final double ZONES_AIM = 300;

    private MatchingReport() {}

    /** The part, empty where nothing was measured. */
    static String of(Path file) throws IOException {
        if (Files.notExists(file)) {
            return "";
        }
        Map<String, Samples.Of> all = new TreeMap<>();
        for (JsonNode result : new ObjectMapper().readTree(file.toFile())) {
            String benchmark = result.get("benchmark").asText();
            Samples.addAll(
                    all.computeIfAbsent(benchmark.substring(benchmark.lastIndexOf('.') + 1), any -> new Samples.Of()),
                    result.get("primaryMetric"));
        }
        StringBuilder part = new StringBuilder("""

                ## Finding sticks

                Kiln Hill's eight zones, four colors each, and a box of 500 sticks. Aimed at, by the 99th percentile: a whole study
                within a frame, 16.7 ms, and the colors of its zones in a photograph of 2000 pixels within 300 ms. The plain search
                works out every stick's value and difference anew for every color, and sorts them all; the last column is how many
                times ours it takes.
                """);
        part.append(missed(all)).append('\n');
        part.append(Report.measured(file)).append("\n\n");
        part.append("| what | median | 99th percentile | plain search of it |\n| --- | --- | --- | --- |\n");
        Optional<Samples.Of> plainly = Optional.ofNullable(all.get(PLAINLY));
        titles().forEach((benchmark, what) -> Optional.ofNullable(all.get(benchmark))
                .ifPresent(times -> part.append("| " + what + " | " + Report.number(times.at(.5)) + " | "
                        + Report.number(times.at(.99)) + " | "
                        + plainly.filter(any -> benchmark.startsWith("match") && !benchmark.equals(PLAINLY))
                                .map(plain -> Report.ratio(plain.at(.5), times.at(.5)))
                                .orElse("")
                        + " |\n")));
        return part.toString();
    }

    /** By the 99th percentile. */
    private static String missed(Map<String, Samples.Of> all) {
        List<String> where = new ArrayList<>();
        titles().forEach((benchmark, what) -> Optional.ofNullable(all.get(benchmark))
                .filter(times -> !benchmark.equals(PLAINLY))
                .filter(times -> times.at(.99) >= (benchmark.startsWith("zoneColors") ? ZONES_AIM : FRAME))
                .ifPresent(times -> where.add(what)));
        return Report.missed(where);
    }

    private static Map<String, String> titles() {
        Map<String, String> titles = new LinkedHashMap<>();
        titles.put("match", "sticks for every color, value first");
        titles.put("matchWithoutTrust", "the same by the plain difference");
        titles.put(PLAINLY, "plain search, value first");
        titles.put("setOut", "what to set out, at most 12");
        titles.put("setOutSixteen", "what to set out, at most 16");
        titles.put("zoneColors", "colors of the zones, all processors");
        titles.put("zoneColorsInTurn", "colors of the zones, one after the other");
        return titles;
    }
}
