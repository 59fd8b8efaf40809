package umbercard.cli;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.TypeConversionException;
import umbercard.words.Words;

/** A part of a whole as it is written in a call: {@code 0.6} or {@code 60%}. */
record Share(double of) {
    private static final Pattern WRITTEN = Pattern.compile("(\\d{0,3}(?:\\.\\d{1,9})?)\\s*(%?)");

    /** From 0 to 1. */
    static Share parse(String written) {
        Matcher matcher = WRITTEN.matcher(written.strip());
        if (matcher.matches() && !matcher.group(1).isEmpty()) {
            double number = Double.parseDouble(matcher.group(1));
            double share = matcher.group(2).isEmpty() ? number : number / 100;
            if (share <= 1) {
                return new Share(share);
            }
        }
        throw new TypeConversionException(Words.say("cli.wrong.share", written));
    }
}
