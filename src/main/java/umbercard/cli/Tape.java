package umbercard.cli;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.TypeConversionException;
import umbercard.model.Keyed;
import umbercard.model.Surface.Unit;
import umbercard.words.Words;

/** The width of the tape as it is written in a call, for example {@code 0.25in}. */
record Tape(double width, Unit unit) {
    private static final Pattern WRITTEN = Pattern.compile("(\\d{1,3}(?:\\.\\d{1,4})?)\\s*(in|cm)");

    static final Tape NONE = new Tape(0, Unit.IN);

    static Tape parse(String written) {
        Matcher matcher = WRITTEN.matcher(written.strip().toLowerCase(Locale.ROOT));
        if (!matcher.matches()) {
            throw new TypeConversionException(Words.say("cli.wrong.tape", written));
        }
        return new Tape(
                Double.parseDouble(matcher.group(1)),
                Keyed.find(Unit.class, matcher.group(2)).orElseThrow());
    }

    /** Its width in another unit. */
    double in(Unit other) {
        return unit == other ? width : width * unit.millimeters() / other.millimeters();
    }
}
