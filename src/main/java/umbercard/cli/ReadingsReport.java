package umbercard.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.MissingResourceException;
import umbercard.color.ValueScale;
import umbercard.door.Finding;
import umbercard.door.Reading;
import umbercard.door.Rule;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.readings.Evaluation;
import umbercard.words.Words;

/** The readings of one thumbnail, to be printed. */
record ReadingsReport(Study study, Thumbnail thumbnail, List<Line> lines) {

    /** One reading. */
    record Line(Rule rule, Finding finding) {}

    ReadingsReport(Study study, Thumbnail thumbnail, List<Reading> readings, Map<String, Finding> findings) {
        this(study, thumbnail, lines(readings, findings));
    }

    private static List<Line> lines(List<Reading> readings, Map<String, Finding> findings) {
        List<Line> lines = new ArrayList<>();
        for (Reading reading : readings) {
            Finding finding = findings.get(reading.id());
            if (finding != null) {
                lines.add(new Line(reading.rule(), finding));
            }
        }
        return lines;
    }

    /** Name, verdict and sentence in columns, under the thumbnail's name. */
    String table() {
        List<List<String>> rows = new ArrayList<>();
        for (Line line : lines) {
            rows.add(List.of(
                    name(line.rule()),
                    Words.say("trade.verdict." + line.finding().verdict().key()),
                    Words.say(line.finding().sentence())));
        }
        List<String> table = new ArrayList<>(List.of(Words.say("cli.readings.of", study.title(), thumbnail.name())));
        table.addAll(Columns.of(rows));
        return String.join(System.lineSeparator(), table);
    }

    static String name(Rule rule) {
        try {
            return Words.say("readings." + rule.id() + ".name");
        } catch (MissingResourceException notOurs) {
            return rule.id();
        }
    }

    /** The rule with the limits in force; the id of one whose words are not here. */
    String ruleInWords(Rule rule, ValueScale numbering) {
        try {
            return Words.say(Evaluation.said(rule, study), numbering);
        } catch (MissingResourceException notOurs) {
            return rule.id();
        }
    }
}
