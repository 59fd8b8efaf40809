package umbercard.bench;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import umbercard.bench.Scenes.Dragged;

/** The parts of the page that tell what a drag of a mark costs, and the plot of an event's cost by the number of marks. */
final class DragReport {
    private static final int[] MARKS = {10, 50, 200, 1000};
    private static final int[] NODES = {50, 300};

    private final Samples samples;
    private final StringBuilder page = new StringBuilder();

    private DragReport(Samples samples) {
        this.samples = samples;
    }

    /** The parts that were measured; the plot goes into a folder. */
    static String of(Path results, Path images) throws IOException {
        Path events = results.resolve("events.json");
        boolean measured = Files.exists(events);
        DragReport report = new DragReport(measured ? Samples.read(events) : Samples.none());
        if (measured) {
            report.events(events);
            report.worst();
            report.press();
            Files.createDirectories(images);
            Files.writeString(images.resolve("drag-cost.svg"), report.plot());
        }
        report.errors(results.resolve("errors.json"));
        report.frames(results.resolve("frames.json"));
        return report.page.toString();
    }

    private void line(String words, Object... figures) {
        page.append(String.format(Locale.ROOT, words, figures)).append('\n');
    }

    private Optional<Samples.Of> of(String what, Method method, int marks, int nodes, Dragged dragged) {
        return samples.of(new Samples.Key(what, method, marks, nodes, dragged));
    }

    private String cell(Optional<Samples.Of> times) {
        return times.map(t -> Report.number(t.at(.5)) + (t.count() < 10 ? "" : " / " + Report.number(t.at(.99))))
                .orElse("–");
    }

    private String ratio(Method baseline, Method method, int marks, int nodes) {
        OptionalDouble slow = median(baseline, marks, nodes);
        OptionalDouble fast = median(method, marks, nodes);
        return slow.isPresent() && fast.isPresent()
                ? Report.number(slow.getAsDouble() / fast.getAsDouble()) + " ×"
                : "–";
    }

    private OptionalDouble median(Method method, int marks, int nodes) {
        return of("event", method, marks, nodes, Dragged.ORDINARY)
                .map(times -> OptionalDouble.of(times.at(.5)))
                .orElse(OptionalDouble.empty());
    }

    private void table(String what, List<Method> methods, Dragged dragged, int... marks) {
        StringBuilder heads = new StringBuilder("| nodes | method |");
        StringBuilder rule = new StringBuilder("| --- | --- |");
        for (int n : marks) {
            heads.append(' ').append(n).append(" marks |");
            rule.append(" --- |");
        }
        line("");
        line("%s", heads);
        line("%s", rule);
        for (int nodes : NODES) {
            for (Method method : methods) {
                StringBuilder row = new StringBuilder("| " + nodes + " | " + method.words() + " |");
                for (int n : marks) {
                    row.append(' ')
                            .append(cell(of(what, method, n, nodes, dragged)))
                            .append(" |");
                }
                line("%s", row);
            }
        }
    }

    private static List<Method> ours() {
        List<Method> ours = new ArrayList<>(List.of(Method.values()));
        ours.removeAll(List.of(Method.AREA, Method.OVERLAY));
        return ours;
    }

    private void events(Path file) throws IOException {
        line("");
        line("## One drag event, all figures of the live ledger");
        line("");
        line(
                "Median / 99th percentile. Marks are uneven rounds of .04 to .16 of the frame's height, two of three laid, the");
        line(
                "others lifted; \"–\" was not measured because one event takes over ten seconds. The two that overlay every mark");
        line("keep each mark's own shape from event to event, which makes them faster. %s", Report.measured(file));
        table("event", List.of(Method.values()), Dragged.ORDINARY, MARKS);
        line("");
        line("![Cost of one drag event by the number of marks](images/drag-cost.svg)");
        line("");
        line("How many times faster, by the medians:");
        line("");
        line("| nodes | method | against | 10 marks | 50 marks | 200 marks | 1000 marks |");
        line("| --- | --- | --- | --- | --- | --- | --- |");
        for (int nodes : NODES) {
            for (Method method : ours()) {
                for (Method baseline : List.of(Method.AREA, Method.OVERLAY)) {
                    StringBuilder row =
                            new StringBuilder("| " + nodes + " | " + method.words() + " | " + baseline.words() + " |");
                    for (int n : MARKS) {
                        row.append(' ')
                                .append(ratio(baseline, method, n, nodes))
                                .append(" |");
                    }
                    line("%s", row);
                }
            }
        }
    }

    private void worst() {
        line("");
        line("## The worst drag: a mass over a third of the frame");
        table("event", ours(), Dragged.MASS, 1000);
    }

    private void press() {
        line("");
        line("## Pressing the button");
        line("");
        line("The first event of a drag, after another mark was dragged.");
        table("press", ours(), Dragged.ORDINARY, MARKS);
        line("");
        line("On a mass over a third of the frame:");
        table("press", ours(), Dragged.MASS, 1000);
    }

    private void errors(Path file) throws IOException {
        if (Files.notExists(file)) {
            return;
        }
        List<Errors.Worst> errors = new ObjectMapper().readValue(file.toFile(), new TypeReference<>() {});
        line("");
        line("## Error of the dark share");
        line("");
        line("Against rows through the drawn curves, largest of a few events, as a share of the frame.");
        line("");
        line("| method | marks | nodes | error |");
        line("| --- | --- | --- | --- |");
        for (Errors.Worst worst : errors) {
            line("| %s | %d | %d | %.1e |", worst.method().words(), worst.marks(), worst.nodes(), worst.error());
        }
    }

    private void frames(Path file) throws IOException {
        if (Files.notExists(file)) {
            return;
        }
        line("");
        line("## Frames while a point is dragged");
        line("");
        List<FrameTimes> frames = new ObjectMapper().readValue(file.toFile(), new TypeReference<>() {});
        line(
                "From the dispatch of a drag event until all that it caused on the event thread is painted: the real desk with");
        line(
                "Kiln Hill's photograph, 1280 × 740 on a virtual display. *At work* is the event thread's own processor time. %s",
                Report.measured(file));
        line("");
        line(
                "| marks | nodes | dragged: a point of | frames | median | p99 | worst | at work, median | p99 | button pressed |");
        line("| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |");
        for (FrameTimes f : frames) {
            line(
                    "| %d | %d | %s | %d | %s | %s | %s | %s | %s | %s |",
                    f.marks(),
                    f.nodes(),
                    f.dragged(),
                    f.drags().size(),
                    Report.number(Report.at(f.drags(), .5)),
                    Report.number(Report.at(f.drags(), .99)),
                    Report.number(Report.at(f.drags(), 1)),
                    Report.number(Report.at(f.cpu(), .5)),
                    Report.number(Report.at(f.cpu(), .99)),
                    Report.number(Report.at(f.press(), 1)));
        }
    }

    private String plot() {
        LogPlot plot = new LogPlot("marks", "milliseconds for one drag event, median, 50 nodes");
        for (Method method : Method.values()) {
            List<double[]> points = new ArrayList<>();
            for (int n : MARKS) {
                median(method, n, 50).ifPresent(ms -> points.add(new double[] {n, ms}));
            }
            plot.add(method.words(), points);
        }
        return plot.svg();
    }
}
