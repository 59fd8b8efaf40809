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
        List<String[]> rows = new ArrayList<>();
        for (Line line : lines) {
            rows.add(new String[] {
                name(line.rule()),
                Words.say("trade.verdict." + line.finding().verdict().key()),
                Words.say(line.finding().sentence())
            });
        }
        StringBuilder table = new StringBuilder(Words.say("cli.readings.of", study.title(), thumbnail.name()));
        for (String[] row : rows) {
            table.append(System.lineSeparator())
                    .append(padded(row[0], width(rows, 0)))
                    .append(padded(row[1], width(rows, 1)))
                    .append(row[2]);
        }
        return table.toString();
    }

    private static int width(List<String[]> rows, int column) {
        return rows.stream().mapToInt(row -> row[column].length()).max().orElse(0) + 2;
    }

    private static String padded(String word, int width) {
        return word + " ".repeat(width - word.length());
    }

    private static String name(Rule rule) {
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
