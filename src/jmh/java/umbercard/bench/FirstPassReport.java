package umbercard.bench;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import umbercard.bench.FirstPasses.Times;

/** The part of the page that tells what a first pass costs. */
final class FirstPassReport {
    private FirstPassReport() {}

    /** The part, empty where nothing was measured. */
    static String of(Path file) throws IOException {
        if (Files.notExists(file)) {
            return "";
        }
        List<Times> all = new ObjectMapper().readValue(file.toFile(), new TypeReference<>() {});
        StringBuilder part = new StringBuilder("""

                ## The first pass

                Kiln Hill at 2000 pixels, from the field to the marks; all ways in turn. ImageJ and OpenCV blur, split once, and
                outline all pieces; they neither drop small ones, nor look for a split, nor fit curves. In the last columns, how many
                times ours each of them takes, in bold where we are behind.
                """);
        part.append(Report.measured(file)).append("\n\n");
        part.append("| what | median | 99th percentile | ImageJ of it | OpenCV of it |\n");
        part.append("| --- | --- | --- | --- | --- |\n");
        for (Times one : all) {
            boolean ours = !one.what().equals(FirstPasses.IMAGEJ) && !one.what().equals(FirstPasses.OPENCV);
            part.append("| " + (ours ? "ours, " : "") + one.what() + " | " + Report.number(one.median()) + " | "
                    + Report.number(one.p99()) + " | " + (ours ? ratio(all, FirstPasses.IMAGEJ, one) : "") + " | "
                    + (ours ? ratio(all, FirstPasses.OPENCV, one) : "") + " |\n");
        }
        return part.toString();
    }

    private static String ratio(List<Times> all, String other, Times ours) {
        return all.stream()
                .filter(one -> one.what().equals(other))
                .map(one -> Report.ratio(one.median(), ours.median()))
                .findFirst()
                .orElse("–");
    }
}
