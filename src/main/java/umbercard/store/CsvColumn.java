package umbercard.store;

import java.util.Optional;
import java.util.stream.Stream;

/** The columns that a table of sticks may have. Their names count in either case, but for y and Y, which mean two things. */
enum CsvColumn {
    NAME("name"),
    PLACE("place"),
    ROW("row"),
    COLUMN("column"),
    HEX("hex"),
    L("L"),
    A("a"),
    B("b"),
    X("x"),
    Y("y"),
    LUMINANCE("Y"),
    WHITE("white"),
    HARDNESS("hardness"),
    OWNED("owned"),
    NOTE("note"),
    ID("id");

    private final String title;

    CsvColumn(String title) {
        this.title = title;
    }

    /** Its name as a table's first line has it. */
    String title() {
        return title;
    }

    static Optional<CsvColumn> named(String title) {
        Stream<CsvColumn> all = Stream.of(values());
        return (title.equalsIgnoreCase("y")
                        ? all.filter(column -> column.title.equals(title))
                        : all.filter(column -> column.title.equalsIgnoreCase(title)))
                .findFirst();
    }
}
