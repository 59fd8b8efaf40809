package umbercard.desk.box;

import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import umbercard.color.MunsellValue;
import umbercard.model.Stick;
import umbercard.words.Words;

/** What a stick is, in words. */
public final class StickWords {
    private StickWords() {}

    /** The stick's place in the tray, then its name; what it lacks is left out. */
    public static String stick(Stick stick) {
        return Stream.concat(stick.slot().map(Stick.Slot::label).stream(), Stream.of(stick.title()))
                .distinct()
                .collect(Collectors.joining("  "));
    }

    /** The value in few letters, to stand in a column. */
    public static String value(Stick stick) {
        return Words.brief(MunsellValue.of(stick.color()));
    }

    /** A mark of the painter's numbering of values, as short as it can be. */
    static String mark(double value) {
        return Words.values().name(value).isPresent()
                ? Words.brief(new MunsellValue(value))
                : Long.toString(Math.round(Words.values().number(value)));
    }

    /** Whether every word that is looked for stands in the stick's name, its place or its note. */
    static boolean isSought(Stick stick, String wanted) {
        String known = Stream.of(
                        stick.title(), stick.slot().map(Stick.Slot::label).orElse(""), stick.note())
                .collect(Collectors.joining(" "))
                .toLowerCase(Locale.ROOT);
        return Stream.of(wanted.toLowerCase(Locale.ROOT).split("\\s+")).allMatch(known::contains);
    }
}
