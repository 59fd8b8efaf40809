package umbercard.bench;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.results.format.ResultFormatFactory;
import org.openjdk.jmh.results.format.ResultFormatType;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import umbercard.bench.Scenes.Dragged;

/**
 * Runs the benchmarks of one drag event, all methods in turn on one drawing after the other, that several times over: so
 * what slows the machine for a while slows all of them.
 */
final class Events {
    private static final int[] MARKS = {10, 50, 200, 1000};
    private static final int[] NODES = {50, 300};

    /** Above this, in marks times marks times nodes, an overlay of every mark takes so long that it is timed once or twice. */
    private static final long SLOW = 500_000;

    private final int rounds;
    private final boolean all;
    private final List<RunResult> results = new ArrayList<>();

    /**
     * Nothing measured yet.
     *
     * @param all whether baselines that take minutes an event are measured as well
     */
    Events(int rounds, boolean all) {
        this.rounds = rounds;
        this.all = all;
    }

    /** Measures and writes the results in JMH's own form. */
    void run(Path out) throws RunnerException, IOException {
        for (int round = 0; round < rounds; round++) {
            for (int nodes : NODES) {
                for (int marks : MARKS) {
                    scene(round, marks, nodes, Dragged.ORDINARY);
                }
                scene(round, 1000, nodes, Dragged.MASS);
            }
        }
        try (PrintStream stream = new PrintStream(Files.newOutputStream(out), true, StandardCharsets.UTF_8)) {
            ResultFormatFactory.getInstance(ResultFormatType.JSON, stream).writeOut(results);
        }
    }

    private void scene(int round, int marks, int nodes, Dragged dragged) throws RunnerException {
        for (Method method : Method.values()) {
            boolean baseline = method == Method.AREA || method == Method.OVERLAY;
            boolean slow = baseline && (long) marks * marks * nodes > SLOW;
            boolean wanted = all || method.isBearable(marks, nodes);
            if (wanted && !(slow && round > 0) && !(baseline && dragged == Dragged.MASS)) {
                results.addAll(fork("event", slow, method, marks, nodes, dragged));
                if (!baseline) {
                    results.addAll(fork("press", false, method, marks, nodes, dragged));
                }
            }
        }
    }

    private static Collection<RunResult> fork(
            String benchmark, boolean slow, Method method, int marks, int nodes, Dragged dragged)
            throws RunnerException {
        boolean press = benchmark.equals("press");
        ChainedOptionsBuilder options = new OptionsBuilder()
                .include(DragBenchmark.class.getName() + "[.]" + benchmark + "$")
                .param("method", method.name())
                .param("marks", Integer.toString(marks))
                .param("nodes", Integer.toString(nodes))
                .param("dragged", dragged.name())
                .forks(1)
                .jvmArgsAppend("-Xmx1g")
                .warmupIterations(press ? 30 : slow ? 0 : 2)
                .warmupTime(TimeValue.milliseconds(700))
                .measurementIterations(press ? 40 : 1)
                .measurementTime(slow ? TimeValue.milliseconds(1) : TimeValue.milliseconds(1500));
        return new Runner(options.build()).run();
    }
}
