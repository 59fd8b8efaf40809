package umbercard.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The parts of the page that tell what a move of the squint and of the split cost, and the main colors. */
final class SquintReport {
    private final Map<Integer, Map<String, Samples.Of>> byHeight = new TreeMap<>();
    private final StringBuilder page = new StringBuilder();

    private SquintReport() {}

    /** The parts, empty where nothing was measured. */
    static String of(Path file) throws IOException {
        if (Files.notExists(file)) {
            return "";
        }
        SquintReport report = new SquintReport();
        for (JsonNode result : new ObjectMapper().readTree(file.toFile())) {
            String benchmark = result.get("benchmark").asText();
            Samples.Of times = report.byHeight
                    .computeIfAbsent(result.get("params").get("height").asInt(), any -> new TreeMap<>())
                    .computeIfAbsent(benchmark.substring(benchmark.lastIndexOf('.') + 1), any -> new Samples.Of());
            Samples.addAll(times, result.get("primaryMetric"));
        }
        String measured = Report.measured(file);
        report.part("""
                ## A move of the squint

                Kiln Hill, the blur anywhere from 0.04 to 4 percent of the diagonal, median / 99th percentile, by the rows of the
                picture: 440 as the desk shows it, 800 as a large window does, 1333 at working size. While a rule moves, the desk
                makes 800 rows at most, 600 in color, 300 where edges are kept, and all of them once it rests. Ours is the Gaussian
                by the pyramid, to grays, with the curve of values; ImageJ and OpenCV blur the same linear light in single precision
                and bring it to eight bits, with a histogram. OpenCV and ours use all processors.
                """ + measured, "squintValues");
        report.more(
                "Ours alone:",
                Map.of(
                        "squintColors", "in color",
                        "squintTwoValues", "in two values",
                        "squintKeepingEdges", "keeping edges, to grays",
                        "squintTwoValuesKeepingEdges", "keeping edges, in two values",
                        "squintColorsKeepingEdges", "keeping edges, in color"));
        report.part("""
                ## A move of the split

                The squinted field in two values, and the share that is dark. Ours has the share from a curve made once, and makes
                colors of four bytes; the others make one byte a pixel.
                """ + measured, "split");
        report.more("Ours alone:", Map.of("splitInFive", "in five values"));
        report.part("""
                ## The main colors

                Twelve colors of the picture. Ours gathers in CIE L\\*a\\*b\\* what lies in one bin of 5 bits a channel, cuts, and does
                Lloyd's rounds to their end; ImageJ does a median cut in sRGB, with no rounds; OpenCV does k-means of every pixel in
                L\\*a\\*b\\*, thirty rounds at most.
                """ + measured, "clusters");
        return report.page.toString();
    }

    private void part(String words, String benchmark) {
        page.append('\n')
                .append(words)
                .append("\n\n| rows | ours | ImageJ | OpenCV | ImageJ of ours | OpenCV of ours |\n");
        page.append("| --- | --- | --- | --- | --- | --- |\n");
        byHeight.forEach((rows, all) -> {
            Optional<Samples.Of> ours = Optional.ofNullable(all.get(benchmark));
            List<String> cells = new ArrayList<>(List.of(Integer.toString(rows), cell(ours)));
            List<String> ratios = new ArrayList<>();
            for (String other : List.of("ByImageJ", "ByOpenCv")) {
                Optional<Samples.Of> theirs = Optional.ofNullable(all.get(benchmark + other));
                cells.add(cell(theirs));
                ratios.add(ours.flatMap(o -> theirs.map(t -> Report.ratio(t.at(.5), o.at(.5))))
                        .orElse("–"));
            }
            cells.addAll(ratios);
            page.append("| ").append(String.join(" | ", cells)).append(" |\n");
        });
    }

    private void more(String words, Map<String, String> benchmarks) {
        page.append('\n').append(words).append("\n\n| rows | what | ms |\n| --- | --- | --- |\n");
        byHeight.forEach((rows, all) -> new TreeMap<>(benchmarks)
                .forEach((benchmark, what) -> page.append(
                        "| " + rows + " | " + what + " | " + cell(Optional.ofNullable(all.get(benchmark))) + " |\n")));
    }

    private static String cell(Optional<Samples.Of> times) {
        return times.map(t -> Report.number(t.at(.5)) + " / " + Report.number(t.at(.99)))
                .orElse("–");
    }
}
