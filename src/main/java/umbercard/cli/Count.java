package umbercard.cli;

import picocli.CommandLine.TypeConversionException;
import umbercard.words.Words;

/** A whole number from 2 to 99 as it is written in a call. */
record Count(int of) {
    static Count parse(String written) {
        if (!written.matches("[2-9]|[1-9]\\d")) {
            throw new TypeConversionException(Words.say("cli.wrong.count", written));
        }
        return new Count(Integer.parseInt(written));
    }
}
