package umbercard.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import umbercard.color.HueFamily;
import umbercard.color.MunsellValue;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.notes.ColorMatches;
import umbercard.notes.ColoredZone;
import umbercard.notes.Gap;
import umbercard.notes.StickMatch;
import umbercard.notes.Suggestion;
import umbercard.notes.Trust;
import umbercard.words.Message;
import umbercard.words.Words;

/** Which sticks fit the zones of a thumbnail, what to set out, and what is missing, to be printed. */
record MatchReport(
        Study study,
        Thumbnail thumbnail,
        Trust trust,
        List<ColoredZone> zones,
        List<ColorMatches> matches,
        Optional<Suggestion> suggestion,
        List<Gap> gaps) {

    /** The sticks for each color of each zone; with a suggestion, that in their place. */
    String inWords() {
        List<String> lines = new ArrayList<>();
        lines.add(Words.say("cli.match.of", study.title(), thumbnail.name()));
        suggestion.ifPresentOrElse(suggested -> tell(suggested, lines), () -> lines.addAll(table()));
        if (!gaps.isEmpty()) {
            lines.add(Words.say("cli.match.gaps"));
            gaps.forEach(gap -> lines.add("  " + Words.say(gap.said())));
        }
        return String.join(System.lineSeparator(), lines);
    }

    /** The color matches of one zone. */
    List<ColorMatches> of(ColoredZone zone) {
        return matches.stream()
                .filter(match -> match.zone().equals(zone.zone().id()))
                .toList();
    }

    private List<String> table() {
        List<List<String>> rows = new ArrayList<>();
        for (ColoredZone zone : zones) {
            String name = zone.zone().name();
            for (ColorMatches match : of(zone)) {
                String color = color(match);
                for (StickMatch stick : match.sticks()) {
                    rows.add(List.of(name, color, title(stick.stick()), figure(stick), words(match, stick)));
                    name = "";
                    color = "";
                }
            }
        }
        return Columns.of(rows);
    }

    private static String color(ColorMatches match) {
        Message family = Message.of(
                "trade.hue-family." + HueFamily.of(match.color().color()).key());
        return Words.say(
                "cli.match.color",
                100 * match.color().share(),
                family,
                MunsellValue.of(match.color().color()));
    }

    static String title(Stick stick) {
        return stick.slot()
                .filter(slot -> stick.name().isPresent())
                .map(slot -> Words.say("cli.match.stick", slot.label(), stick.title()))
                .orElse(stick.title());
    }

    private static String figure(StickMatch stick) {
        return Words.say("cli.match.difference", stick.likeness().difference());
    }

    private static String words(ColorMatches match, StickMatch stick) {
        String words = Words.say(stick.likeness().words());
        return match.withinValue() ? words : Words.say("cli.match.nearest-in-value", words);
    }

    private static void tell(Suggestion suggested, List<String> lines) {
        lines.add(Words.say(suggested.summary()));
        lines.addAll(Columns.of(suggested.picks().stream()
                .map(pick -> List.of("  " + title(pick.stick()), Words.say(pick.reason())))
                .toList()));
        suggested.lacks().forEach(lack -> lines.add(Words.say(lack)));
        suggested.missed().forEach(missed -> lines.add(Words.say(missed.said())));
    }
}
