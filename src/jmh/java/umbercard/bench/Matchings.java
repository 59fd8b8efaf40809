package umbercard.bench;

import java.nio.file.Path;
import org.openjdk.jmh.results.format.ResultFormatType;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/** Runs the benchmarks of matching and setting out. */
final class Matchings {
    private Matchings() {}

    /** Measures, and writes JMH's own form. */
    static void run(int rounds, Path out) throws RunnerException {
        new Runner(new OptionsBuilder()
                        .include(MatchingBenchmark.class.getName() + "[.]")
                        .forks(1)
                        .jvmArgsAppend("-Xmx1g")
                        .warmupIterations(2)
                        .warmupTime(TimeValue.seconds(1))
                        .measurementIterations(rounds)
                        .measurementTime(TimeValue.seconds(2))
                        .resultFormat(ResultFormatType.JSON)
                        .result(out.toString())
                        .build())
                .run();
    }
}
