package umbercard.cli;

import picocli.CommandLine.TypeConversionException;
import umbercard.notes.SettingOut.Wish;
import umbercard.words.Words;

/** How many sticks to set out at most, as it is written in a call. */
record StickCount(int of) {
    static StickCount parse(String written) {
        if (written.matches("\\d{1,2}")) {
            int number = Integer.parseInt(written);
            if (number >= Wish.LEAST_MOST && number <= Wish.MOST_MOST) {
                return new StickCount(number);
            }
        }
        throw new TypeConversionException(Words.say("cli.wrong.sticks", written, Wish.LEAST_MOST, Wish.MOST_MOST));
    }
}
