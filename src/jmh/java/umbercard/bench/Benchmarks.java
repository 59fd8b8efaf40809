package umbercard.bench;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.openjdk.jmh.runner.RunnerException;
import umbercard.desk.Frames;

/**
 * Runs what its arguments name: {@code events}, {@code errors}, {@code frames}, {@code photo}, {@code squint}, {@code
 * first-pass}, {@code matching}, {@code tray}, then {@code report}; all of them when they say {@code all}. The results are left under {@code target/bench}. With {@code quick} each event is measured in one round
 * instead of three; with {@code baselines} also by the methods that take minutes for one; with {@code publish} the parts
 * of the page that have results under {@code target/bench}, and the plot, are written into {@code src/docs} as well; the
 * other parts stay there as they were.
 */
public final class Benchmarks {
    private static final Path OUT = Path.of("target", "bench");

    private Benchmarks() {}

    public static void main(String[] args) throws IOException, InterruptedException, RunnerException {
        Set<String> wanted = Set.of(args);
        boolean all = wanted.contains("all");
        Files.createDirectories(OUT);
        if (all || wanted.contains("events")) {
            new Events(wanted.contains("quick") ? 1 : 3, wanted.contains("baselines")).run(OUT.resolve("events.json"));
        }
        if (all || wanted.contains("errors")) {
            write("errors.json", Errors.measure());
        }
        if (all || wanted.contains("frames")) {
            frames();
        }
        if (all || wanted.contains("photo")) {
            write("decode.json", DecodeTimes.measure(OUT, wanted.contains("quick") ? 5 : 15));
            write("memory.json", LeastMemory.measure(OUT));
        }
        if (all || wanted.contains("squint")) {
            Squints.run(wanted.contains("quick") ? 1 : 3, OUT.resolve("squint.json"));
        }
        if (all || wanted.contains("matching")) {
            Matchings.run(wanted.contains("quick") ? 1 : 3, OUT.resolve("matching.json"));
        }
        if (all || wanted.contains("first-pass")) {
            write("first-pass.json", FirstPasses.measure());
        }
        if (all || wanted.contains("tray")) {
            write("tray.json", TrayErrors.measure());
        }
        if (all || wanted.contains("report")) {
            Report.write(OUT, OUT);
            if (wanted.contains("publish")) {
                Report.write(OUT, Path.of("src", "docs"));
            }
        }
        // The toolkit's threads would keep the program alive.
        System.exit(0);
    }

    private static void write(String name, Object results) throws IOException {
        new ObjectMapper()
                .enable(SerializationFeature.INDENT_OUTPUT)
                .writeValue(OUT.resolve(name).toFile(), results);
    }

    private static void frames() throws IOException, InterruptedException {
        if (!Frames.hasDisplay()) {
            System.out.println("The frames are skipped: there is no display.");
            return;
        }
        List<FrameTimes> frames = Frames.measure(50, 8);
        write("frames.json", frames);
    }
}
