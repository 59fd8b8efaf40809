package umbercard.cli;

import picocli.CommandLine.TypeConversionException;
import umbercard.words.Words;

/** Which of several cards is meant, counted from 1, as it is written in a call. */
record CardNumber(int of) {
    static CardNumber parse(String written) {
        if (!written.matches("[1-9]\\d{0,2}")) {
            throw new TypeConversionException(Words.say("cli.wrong.card-number", written));
        }
        return new CardNumber(Integer.parseInt(written));
    }
}
