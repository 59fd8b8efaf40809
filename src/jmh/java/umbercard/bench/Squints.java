package umbercard.bench;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.results.format.ResultFormatFactory;
import org.openjdk.jmh.results.format.ResultFormatType;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/** Runs the benchmarks of the squint, the split and the main colors, and says what came of them. */
final class Squints {
    private Squints() {}

    /** Measures, writes JMH's own form, and a table beside it. */
    static void run(int rounds, Path out) throws RunnerException, IOException {
        List<RunResult> results = new ArrayList<>();
        for (int round = 0; round < rounds; round++) {
            results.addAll(new Runner(new OptionsBuilder()
                            .include(SquintBenchmark.class.getName() + "[.]")
                            .forks(1)
                            .jvmArgsAppend("-Xmx1g")
                            .warmupIterations(2)
                            .warmupTime(TimeValue.seconds(1))
                            .measurementIterations(1)
                            .measurementTime(TimeValue.seconds(2))
                            .build())
                    .run());
        }
        try (PrintStream stream = new PrintStream(Files.newOutputStream(out), true, StandardCharsets.UTF_8)) {
            ResultFormatFactory.getInstance(ResultFormatType.JSON, stream).writeOut(results);
        }
        Files.writeString(out.resolveSibling("squint.md"), table(results));
    }

    private static String table(List<RunResult> results) {
        StringBuilder table = new StringBuilder("| what | rows of the picture | median, ms | 99th percentile, ms |\n");
        table.append("| --- | --- | --- | --- |\n");
        for (RunResult result : results) {
            Result<?> times = result.getPrimaryResult();
            table.append(String.format(
                    Locale.ROOT,
                    "| %s | %s | %s | %s |%n",
                    times.getLabel(),
                    result.getParams().getParam("height"),
                    Report.number(times.getStatistics().getPercentile(50)),
                    Report.number(times.getStatistics().getPercentile(99))));
        }
        return table.toString();
    }
}
