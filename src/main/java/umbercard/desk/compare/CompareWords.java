package umbercard.desk.compare;

import umbercard.door.Finding;
import umbercard.readings.Telling;
import umbercard.words.Words;

/** What stands in the tables. */
final class CompareWords {
    private CompareWords() {}

    /** A reading's name; the id of one that brings no words. */
    static String name(String reading) {
        String key = "readings." + reading + ".name";
        return Words.has(key) ? Words.say(key) : reading;
    }

    /** What is measured, short enough for a narrow column. */
    static String column(String reading) {
        String key = "compare.column." + reading;
        return Words.has(key) ? Words.say(key) : name(reading);
    }

    /** The telling figure with its unit; nothing for a finding without figures. */
    static String figure(Finding finding) {
        return Telling.of(finding).map(Telling::said).map(Words::say).orElse("");
    }

    static String verdict(Finding finding) {
        return Words.say("trade.verdict." + finding.verdict().key());
    }

    /** Figure, if there is one, and verdict. */
    static String both(Finding finding) {
        String figure = figure(finding);
        return figure.isEmpty() ? verdict(finding) : Words.say("compare.cell", figure, verdict(finding));
    }
}
