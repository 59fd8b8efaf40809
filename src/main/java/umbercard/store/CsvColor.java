package umbercard.store;

import java.util.List;
import java.util.stream.Collectors;

/** The ways in which a table gives colors, the measured ones first: where a row has several, the first of them is taken. */
enum CsvColor {
    LAB(White.D50),
    XYY(White.C),
    HEX(White.D65);

    private final White white;

    CsvColor(White white) {
        this.white = white;
    }

    /** The white that is meant where none is named. */
    White white() {
        return white;
    }

    List<CsvColumn> columns() {
        return switch (this) {
            case LAB -> List.of(CsvColumn.L, CsvColumn.A, CsvColumn.B);
            case XYY -> List.of(CsvColumn.X, CsvColumn.Y, CsvColumn.LUMINANCE);
            case HEX -> List.of(CsvColumn.HEX);
        };
    }

    /** Its columns' names, with commas. */
    String title() {
        return columns().stream().map(CsvColumn::title).collect(Collectors.joining(", "));
    }
}
