package umbercard.cli;

import picocli.CommandLine.TypeConversionException;
import umbercard.words.Words;

/** A Munsell value from 0 to 10 as it is written in a call. */
record MunsellNumber(double value) {
    static MunsellNumber parse(String written) {
        if (written.matches("(\\d(\\.\\d{1,9})?|10(\\.0{1,9})?)")) {
            return new MunsellNumber(Double.parseDouble(written));
        }
        throw new TypeConversionException(Words.say("cli.wrong.value-number", written));
    }
}
