package umbercard.bench;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import umbercard.desk.Frames;

/** Runs what its arguments name; all of it when they say {@code all}. */
public final class Benchmarks {
    private static final Path OUT = Path.of("target", "bench");

    private Benchmarks() {}

    public static void main(String[] args) throws IOException, InterruptedException {
        Set<String> wanted = Set.of(args);
        Files.createDirectories(OUT);
        if (wanted.contains("all") || wanted.contains("frames")) {
            frames();
        }
        System.exit(0);
    }

    private static void frames() throws IOException, InterruptedException {
        if (!Frames.hasDisplay()) {
            System.out.println("The frames are skipped: there is no display.");
            return;
        }
        List<FrameTimes> frames = Frames.measure(50, 8);
        for (FrameTimes times : frames) {
            System.out.printf(
                    "%5d marks, %s: press %.1f; drags %d, median %.2f, p99 %.2f, worst %.2f; cpu median %.2f, p99 %.2f, worst %.2f; waited p99 %.2f; other %.1f%n",
                    times.marks(),
                    times.dragged(),
                    at(times.press(), 1),
                    times.drags().size(),
                    at(times.drags(), .5),
                    at(times.drags(), .99),
                    at(times.drags(), 1),
                    at(times.cpu(), .5),
                    at(times.cpu(), .99),
                    at(times.cpu(), 1),
                    at(times.waits(), .99),
                    times.longestOther());
        }
        new ObjectMapper()
                .enable(SerializationFeature.INDENT_OUTPUT)
                .writeValue(OUT.resolve("frames.json").toFile(), frames);
    }

    private static double at(List<Double> sorted, double share) {
        return sorted.get((int) Math.min(sorted.size() - 1L, Math.round(share * sorted.size())));
    }
}
