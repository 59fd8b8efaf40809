package umbercard.cli;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.TypeConversionException;
import umbercard.model.Keyed;
import umbercard.model.Surface;
import umbercard.model.Surface.Unit;
import umbercard.words.Message;
import umbercard.words.Words;

/** A sheet as it is written in a call: width × height and a unit, for example {@code 9x12in} or {@code 30x40cm}. */
record SheetSize(double width, double height, Unit unit) {
    private static final Pattern WRITTEN =
            Pattern.compile("(\\d{1,4}(?:\\.\\d{1,4})?)\\s*[x×]\\s*(\\d{1,4}(?:\\.\\d{1,4})?)\\s*(in|cm)");

    /** Until a call gives one. */
    static final SheetSize NONE = new SheetSize(1, 1, Unit.IN);

    static SheetSize parse(String written) {
        Matcher matcher = WRITTEN.matcher(written.strip().toLowerCase(Locale.ROOT));
        if (matcher.matches()) {
            double width = Double.parseDouble(matcher.group(1));
            double height = Double.parseDouble(matcher.group(2));
            if (width > 0 && height > 0) {
                return new SheetSize(
                        width, height, Keyed.find(Unit.class, matcher.group(3)).orElseThrow());
            }
        }
        throw new TypeConversionException(Words.say("cli.wrong.sheet", written));
    }

    /**
     * The sheet with that tape round it.
     *
     * @throws WrongCall if the tape leaves nothing to paint
     */
    Surface surface(Tape tape) {
        try {
            return new Surface(width, height, unit, tape.in(unit), Optional.empty(), false);
        } catch (IllegalArgumentException tooMuchTape) {
            throw new WrongCall(Message.of("cli.wrong.tape-too-wide"));
        }
    }
}
