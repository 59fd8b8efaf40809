package umbercard.bench;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import umbercard.bench.DecodeTimes.Decoded;
import umbercard.bench.DecodeTimes.Way;
import umbercard.bench.LeastMemory.Needed;

/** The parts of the page that tell how long reading a photograph takes, and in how little memory it can be done. */
final class DecodeReport {
    private static final List<Way> OTHERS = List.of(Way.IMAGEJ, Way.OPENCV, Way.OPENCV_IN_LIGHT);

    private DecodeReport() {}

    /** The parts that were measured. */
    static String of(Path results) throws IOException {
        return times(results.resolve("decode.json")) + memory(results.resolve("memory.json"));
    }

    private static String times(Path file) throws IOException {
        if (Files.notExists(file)) {
            return "";
        }
        List<Decoded> all = new ObjectMapper().readValue(file.toFile(), new TypeReference<>() {});
        Map<String, Map<Way, Double>> medians = new LinkedHashMap<>();
        for (Decoded one : all) {
            medians.computeIfAbsent(name(one), any -> new EnumMap<>(Way.class))
                    .put(one.way(), Report.at(one.times(), .5));
        }
        StringBuilder part = new StringBuilder("""

                ## Reading a photograph

                From a JPEG to a picture of 2000 pixels, all ways in turn on the same file, medians. The floor is the toolkit's own
                decoder, which ours is built on, making the full picture and reducing nothing. Ours averages in linear light. ImageJ
                and OpenCV do so in gamma space, which makes fine detail too dark; OpenCV is measured with linear light of 16 bits
                too. Of a progressive file the toolkit's decoder makes the picture anew for every scan, and ours with it.
                """);
        part.append(Report.measured(file)).append("\n\n");
        part.append("| file | ours | ImageJ | OpenCV | OpenCV, linear light | floor |\n");
        part.append("| --- | --- | --- | --- | --- | --- |\n");
        medians.forEach((name, ms) -> {
            part.append("| ").append(name).append(" | ").append(Report.number(of(ms, Way.WORKING_PICTURE)));
            OTHERS.forEach(way -> part.append(" | ").append(Report.number(of(ms, way))));
            part.append(" | ").append(Report.number(of(ms, Way.BARE))).append(" |\n");
        });
        part.append("\nHow many times ours the others take, in bold where we are behind, and ours of the floor:\n\n");
        part.append("| file | ImageJ | OpenCV | OpenCV, linear light | ours of the floor |\n");
        part.append("| --- | --- | --- | --- | --- |\n");
        medians.forEach((name, ms) -> {
            double ours = of(ms, Way.WORKING_PICTURE);
            part.append("| ").append(name);
            OTHERS.forEach(way -> part.append(" | ").append(Report.ratio(of(ms, way), ours)));
            part.append(String.format(Locale.ROOT, " | %.2f × |%n", ours / of(ms, Way.BARE)));
        });
        return part.toString();
    }

    private static double of(Map<Way, Double> ms, Way way) {
        return ms.getOrDefault(way, Double.NaN);
    }

    private static String name(Decoded one) {
        return String.format(
                Locale.ROOT,
                "%.0f MP%s, %.1f MB",
                one.megapixels(),
                one.progressive() ? ", progressive" : "",
                one.bytes() / 1e6);
    }

    private static String memory(Path file) throws IOException {
        if (Files.notExists(file)) {
            return "";
        }
        List<Needed> all = new ObjectMapper().readValue(file.toFile(), new TypeReference<>() {});
        StringBuilder part = new StringBuilder("""

                ## Memory for reading a photograph

                The least of a few heaps (`-Xmx`) in which a program of its own reads the JPEG of 48 megapixels, and the most memory
                that its process then had in use, with the virtual machine and all libraries. The full picture is 144 MB. OpenCV
                keeps its pictures outside of the heap.
                """);
        part.append(Report.measured(file)).append("\n\n| way | heap, MB | process, MB |\n| --- | --- | --- |\n");
        all.forEach(needed -> part.append(String.format(
                Locale.ROOT,
                "| %s | %d | %s |%n",
                needed.way().words(),
                needed.heap(),
                needed.resident() > 0 ? Report.number(needed.resident()) : "–")));
        return part.toString();
    }
}
