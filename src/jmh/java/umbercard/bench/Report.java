package umbercard.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Writes the page of the benchmarks from what they left. A part that was not measured stays as it stands on the page. */
final class Report {
    private static final String HEAD = """
            # Benchmarks

            Written by `mvn -B -ntp -Pbench test -Dbench.args="all publish"`, whole or in parts; see DEVELOPERS.md. Times are
            milliseconds. They move with the machine; the ratios, taken between ways that ran in turn, hardly do.
            """;

    private static final String PART = "\n## ";

    private Report() {}

    /** Reads the results in one folder and writes {@code benchmarks.md} and its plot into another. */
    static void write(Path results, Path into) throws IOException {
        Path page = into.resolve("benchmarks.md");
        Map<String, String> parts = parts(Files.exists(page) ? Files.readString(page) : "");
        parts.putAll(parts(DragReport.of(results, into.resolve("images"))
                + DecodeReport.of(results)
                + SquintReport.of(results.resolve("squint.json"))
                + FirstPassReport.of(results.resolve("first-pass.json"))
                + MatchingReport.of(results.resolve("matching.json"))
                + TrayReport.of(results.resolve("tray.json"))));
        StringBuilder text = new StringBuilder(HEAD);
        parts.values().forEach(part -> text.append(PART).append(part.strip()).append('\n'));
        Files.writeString(page, text);
    }

    /** The parts by their titles, in order. */
    private static Map<String, String> parts(String page) {
        Map<String, String> parts = new LinkedHashMap<>();
        int from = page.indexOf(PART);
        while (from >= 0) {
            int next = page.indexOf(PART, from + 1);
            String part = page.substring(from + PART.length(), next < 0 ? page.length() : next);
            parts.put(part.lines().findFirst().orElse(""), part);
            from = next;
        }
        return parts;
    }

    /** When and on what the results in a file were measured, as a sentence. */
    static String measured(Path results) throws IOException {
        LocalDate day = Files.getLastModifiedTime(results)
                .toInstant()
                .atZone(ZoneOffset.UTC)
                .toLocalDate();
        return String.format(
                Locale.ROOT,
                "Measured on %s with %d processors, JDK %d.",
                day,
                Runtime.getRuntime().availableProcessors(),
                Runtime.version().feature());
    }

    /** Whether what was aimed at is reached, as a sentence. */
    static String missed(List<String> where) {
        return where.isEmpty() ? "Nowhere is that missed." : "It is missed here: " + String.join("; ", where) + ".";
    }

    /** Three digits that count, as few as that takes. */
    static String number(double value) {
        int decimals = value == 0 ? 0 : (int) Math.max(0, Math.min(6, 2 - Math.floor(Math.log10(Math.abs(value)))));
        return String.format(Locale.ROOT, "%,." + decimals + "f", value);
    }

    /** How many times ours goes into another; bold where we are behind. */
    static String ratio(double other, double ours) {
        String words = number(other / ours) + " ×";
        return other < ours ? "**" + words + "**" : words;
    }

    /** The least value that at least that share of the sorted ones does not exceed. */
    static double at(List<Double> sorted, double share) {
        return sorted.get((int) Math.max(0, Math.ceil(share * sorted.size()) - 1));
    }
}
