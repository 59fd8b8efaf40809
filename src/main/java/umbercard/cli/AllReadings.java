package umbercard.cli;

import java.util.ArrayList;
import java.util.List;
import umbercard.door.Finding;
import umbercard.model.Study;
import umbercard.readings.RuleWords;
import umbercard.readings.Telling;
import umbercard.words.Words;

/** The readings of all thumbnails of a study as a table: a line for each reading, a column for each thumbnail. */
final class AllReadings {
    private AllReadings() {}

    /**
     * Telling figure and verdict of each.
     *
     * @param reports of one study, at least one
     */
    static String table(Study study, List<ReadingsReport> reports) {
        List<List<String>> rows = new ArrayList<>();
        List<String> heading = new ArrayList<>(List.of(study.title()));
        reports.forEach(report -> heading.add(report.thumbnail().name()));
        rows.add(heading);
        for (ReadingsReport.Line line : reports.get(0).lines()) {
            List<String> row = new ArrayList<>(List.of(RuleWords.name(line.rule())));
            reports.forEach(report -> row.add(cell(report, line.rule().id())));
            rows.add(row);
        }
        return String.join(System.lineSeparator(), Columns.of(rows));
    }

    /** Empty for a reading that failed in between. */
    private static String cell(ReadingsReport report, String reading) {
        return report.lines().stream()
                .filter(line -> line.rule().id().equals(reading))
                .findFirst()
                .map(line -> said(line.finding()))
                .orElse("");
    }

    private static String said(Finding finding) {
        String verdict = Words.say("trade.verdict." + finding.verdict().key());
        return Telling.of(finding)
                .map(figure -> Words.say("compare.cell", Telling.said(figure), verdict))
                .orElse(verdict);
    }
}
