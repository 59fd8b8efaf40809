package umbercard.desk.box;

import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import umbercard.model.Stick;

/** What a stick is, in words. */
public final class StickWords {
    private StickWords() {}

    /** The stick's place in the tray, then its name; what it lacks is left out. */
    public static String stick(Stick stick) {
        return Stream.concat(stick.slot().map(Stick.Slot::label).stream(), Stream.of(stick.title()))
                .distinct()
                .collect(Collectors.joining("  "));
    }

    /** The Munsell value to one place. */
    public static String value(Stick stick) {
        return String.format(Locale.ROOT, "%.1f", stick.color().value());
    }
}
