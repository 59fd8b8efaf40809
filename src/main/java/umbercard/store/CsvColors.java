package umbercard.store;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import umbercard.color.Lab;
import umbercard.words.Message;

/**
 * The colors of a table's lines, adapted to D65 as colors are kept. Remembers which kinds and whites it met. Source of the
 * usual whites: what instruments give L*a*b* under, D50 (ISO 13655), and what Munsell's notations are given under, C (ASTM
 * D1535).
 */
final class CsvColors {
    /** The white under which colors are kept. */
    static final White KEPT = White.D65;

    /** How far over 100 or under 0 adaptation may carry a lightness that is then held there; less than can be seen. */
    private static final double BEYOND = 1;

    private static final double PERCENT = 100;

    private final Map<CsvColor, Set<White>> met = new EnumMap<>(CsvColor.class);
    private double mostLuminance = -1;

    /**
     * The color of a line: of the kinds that it has, the first.
     *
     * @throws Wrong if it has none, or one that is not complete, or cannot be
     */
    Lab of(CsvRow row) {
        CsvColor kind = row.colors().stream()
                .filter(color -> color.columns().stream()
                        .anyMatch(column -> row.text(column).isPresent()))
                .findFirst()
                .orElse(row.colors().get(0));
        White white = white(row, kind);
        Lab color = kept(read(row, kind, white), kind);
        met.computeIfAbsent(kind, none -> new TreeSet<>()).add(white);
        return color;
    }

    private static White white(CsvRow row, CsvColor kind) {
        Optional<White> white = row.choice(CsvColumn.WHITE, White.class, White.all());
        if (kind == CsvColor.HEX && white.isPresent() && white.get() != kind.white()) {
            throw CsvRow.wrong(
                    CsvColumn.WHITE, "store.wanted.white-of-hex", white.get().name());
        }
        return white.orElse(kind.white());
    }

    private Lab read(CsvRow row, CsvColor kind, White white) {
        return switch (kind) {
            case LAB ->
                white.ofLab(
                        row.number(CsvColumn.L, Range.PERCENT),
                        row.number(CsvColumn.A, Range.LAB),
                        row.number(CsvColumn.B, Range.LAB));
            case XYY -> chromaticity(row, white);
            case HEX -> hex(row);
        };
    }

    /** With its sign or without. */
    private static Lab hex(CsvRow row) {
        String written = row.text(CsvColumn.HEX)
                .orElseThrow(() -> CsvRow.wrong(CsvColumn.HEX, "store.wanted.present"))
                .strip();
        return Lab.ofHex(written.startsWith("#") ? written : "#" + written)
                .orElseThrow(() -> CsvRow.wrong(CsvColumn.HEX, "store.wanted.hex"));
    }

    private Lab chromaticity(CsvRow row, White white) {
        double x = row.number(CsvColumn.X, Range.SHARE);
        double y = row.number(CsvColumn.Y, Range.CHROMATICITY);
        double luminance = row.number(CsvColumn.LUMINANCE, Range.PERCENT);
        if (x + y > 1) {
            throw CsvRow.wrong(CsvColumn.X, "store.wanted.chromaticities");
        }
        mostLuminance = Math.max(mostLuminance, luminance);
        return white.ofXyy(x, y, luminance / PERCENT);
    }

    /** The color if a box can keep it. */
    private static Lab kept(Lab color, CsvColor kind) {
        double l = Math.max(0, Math.min(PERCENT, color.l()));
        if (Math.abs(l - color.l()) > BEYOND || !Range.LAB.has(color.a()) || !Range.LAB.has(color.b())) {
            throw new Wrong(kind.title(), Message.of("store.wanted.real"));
        }
        return l == color.l() ? color : new Lab(l, color.a(), color.b());
    }

    /** The kinds of color met, each with its whites: {@code L, a, b (D50)}. */
    String understood() {
        return met.entrySet().stream()
                .map(kind -> kind.getKey().title() + " ("
                        + kind.getValue().stream().map(White::name).collect(Collectors.joining(", ")) + ")")
                .collect(Collectors.joining("; "));
    }

    /** What looks as if it might be meant otherwise. */
    List<Message> remarks() {
        return mostLuminance >= 0 && mostLuminance <= 1 ? List.of(Message.of("store.csv.dark")) : List.of();
    }
}
