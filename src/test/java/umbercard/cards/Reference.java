package umbercard.cards;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The published tables beside the tests: lines that begin with # are comments, the next line names the columns. */
final class Reference {
    private Reference() {}

    /** One line of a table, by column. */
    record Row(Map<String, String> cells) {
        String get(String column) {
            return cells.get(column);
        }

        @Override
        public String toString() {
            return String.join(", ", cells.values().stream().limit(2).toList());
        }
    }

    static List<Row> rows(String file) {
        List<String> lines;
        try (InputStream in = Reference.class.getResourceAsStream(file)) {
            lines = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .toList();
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
        List<String> columns = cells(lines.get(0));
        List<Row> rows = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            List<String> cells = cells(line);
            Map<String, String> row = new LinkedHashMap<>();
            for (int i = 0; i < columns.size(); i++) {
                row.put(columns.get(i), cells.get(i));
            }
            rows.add(new Row(row));
        }
        return rows;
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                boolean doubled = quoted && i + 1 < line.length() && line.charAt(i + 1) == '"';
                if (doubled) {
                    cell.append(c);
                    i++;
                } else {
                    quoted = !quoted;
                }
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }
}
