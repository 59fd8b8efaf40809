package umbercard.bench;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The part of the page that tells how far colors from photographs are from the true ones. */
final class TrayReport {
    private static final double AIM = 2;

    private TrayReport() {}

    /** The part, empty where nothing was measured. */
    static String of(Path file) throws IOException {
        if (Files.notExists(file)) {
            return "";
        }
        List<TrayErrors.Row> rows = new ObjectMapper().readValue(file.toFile(), new TypeReference<>() {});
        StringBuilder part = new StringBuilder("""

                ## Colors from a photograph

                CIEDE2000 from the true colors, of sticks in an open tray and of patches rubbed on a card, rendered from spectra with
                noise, uneven light and perspective. Aimed at for the tray: a median under 2; in bold where it is missed. Whites are
                pieces of white paper that were pointed at; on a card its bare parts and printed grays. Under illuminant A and a white
                LED the camera has balanced its picture; what its three sensors took for alike cannot be told apart again.
                """);
        part.append(missed(rows)).append('\n');
        part.append(Report.measured(file)).append("\n\n");
        part.append("| what | light and camera | whites | colors | median | 95th percentile |\n");
        part.append("| --- | --- | --- | --- | --- | --- |\n");
        for (TrayErrors.Row row : rows) {
            String median = Report.number(row.median());
            part.append("| " + row.what() + " | " + row.camera() + " | " + row.whites() + " | " + row.sticks() + " | "
                    + (misses(row) ? "**" + median + "**" : median) + " | " + Report.number(row.high()) + " |\n");
        }
        return part.toString();
    }

    private static boolean misses(TrayErrors.Row row) {
        return row.what().equals("tray") && row.median() >= AIM;
    }

    private static String missed(List<TrayErrors.Row> rows) {
        return Report.missed(rows.stream()
                .filter(TrayReport::misses)
                .map(row -> row.camera() + ", " + row.whites() + (row.whites() == 1 ? " white" : " whites"))
                .toList());
    }
}
