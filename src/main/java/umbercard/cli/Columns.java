package umbercard.cli;

import java.util.ArrayList;
import java.util.List;

/** Lays rows of words out in columns. */
final class Columns {
    private static final int BETWEEN = 2;

    private Columns() {}

    /** One line for each row; all rows have as many words. */
    static List<String> of(List<List<String>> rows) {
        List<String> lines = new ArrayList<>();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int column = 0; column < row.size(); column++) {
                line.append(row.get(column));
                if (column + 1 < row.size()) {
                    line.append(" "
                            .repeat(BETWEEN
                                    + width(rows, column)
                                    - row.get(column).length()));
                }
            }
            lines.add(line.toString());
        }
        return lines;
    }

    private static int width(List<List<String>> rows, int column) {
        return rows.stream().mapToInt(row -> row.get(column).length()).max().orElse(0);
    }
}
