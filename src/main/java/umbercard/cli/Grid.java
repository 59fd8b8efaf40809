package umbercard.cli;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.TypeConversionException;
import umbercard.words.Words;

/** Rows and columns of a tray as they are written in a call, 1 to 99 each: {@code 6x12}. */
record Grid(int rows, int columns) {
    /** Until a call gives one. */
    static final Grid NONE = new Grid(1, 1);

    private static final Pattern WRITTEN = Pattern.compile("([1-9]\\d?)\\s*[xX×]\\s*([1-9]\\d?)");

    static Grid parse(String written) {
        Matcher matcher = WRITTEN.matcher(written.strip());
        if (!matcher.matches()) {
            throw new TypeConversionException(Words.say("cli.wrong.grid", written));
        }
        return new Grid(Integer.parseInt(matcher.group(1)), Integer.parseInt(matcher.group(2)));
    }
}
