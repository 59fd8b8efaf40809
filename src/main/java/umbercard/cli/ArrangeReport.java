package umbercard.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import umbercard.color.ValueScale;
import umbercard.model.ColorNote;
import umbercard.model.Study;
import umbercard.model.Zone;
import umbercard.notes.Purposes;
import umbercard.notes.order.Arranged;
import umbercard.words.Message;
import umbercard.words.Words;

/**
 * Notes in a new order, to be printed.
 *
 * @param study as it was
 * @param off the rules passed over
 */
record ArrangeReport(Study study, Arranged arranged, Set<String> off) {

    /** A line a note: its place, where it stood, stick, zone and purpose, the reason; then what could not be had. */
    String table() {
        List<List<String>> rows = new ArrayList<>();
        int moved = 0;
        for (ColorNote note : arranged.notes()) {
            int place = rows.size() + 1;
            boolean stays = was(note) == place;
            moved += stays ? 0 : 1;
            rows.add(List.of(
                    Integer.toString(place),
                    stays ? "" : Words.say("cli.arrange.was", Integer.toString(was(note))),
                    note.stick().title(),
                    use(note),
                    reasons(note).stream().map(Words::say).collect(Collectors.joining(" "))));
        }
        Stream<String> lines = Stream.of(
                        Stream.of(
                                moved == 0
                                        ? Words.say("cli.arrange.same", study.title())
                                        : Words.say("cli.arrange.changed", study.title(), moved)),
                        Columns.of(rows).stream(),
                        arranged.remarks().stream().map(Words::say))
                .flatMap(some -> some);
        return lines.collect(Collectors.joining(System.lineSeparator()));
    }

    /** One object with stable keys, for scripts; places are counted from 1. */
    String json() {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("study", study.title());
        json.put("without", List.copyOf(off));
        List<Map<String, Object>> notes = new ArrayList<>();
        for (ColorNote note : arranged.notes()) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("id", note.id());
            one.put("place", notes.size() + 1);
            one.put("was", was(note));
            one.put("stick", note.stick().id());
            note.zone().ifPresent(zone -> one.put("zone", zone));
            one.put("purpose", note.purpose());
            one.put("pinned", note.pinned());
            one.put("reasons", said(reasons(note)));
            notes.add(one);
        }
        json.put("notes", notes);
        json.put("broken", arranged.broken().stream().map(ArrangeReport::pair).toList());
        json.put("kept", arranged.kept().stream().map(ArrangeReport::pair).toList());
        json.put("remarks", said(arranged.remarks()));
        return JsonText.of(json);
    }

    private static Map<String, Object> pair(Arranged.Broken pair) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("early", pair.early().id());
        json.put("late", pair.late().id());
        json.put("rule", pair.rule().id());
        return json;
    }

    private static List<String> said(List<Message> messages) {
        return messages.stream()
                .map(message -> Words.say(message, ValueScale.MUNSELL))
                .toList();
    }

    private int was(ColorNote note) {
        return study.notes().stream().map(ColorNote::id).toList().indexOf(note.id()) + 1;
    }

    private List<Message> reasons(ColorNote note) {
        return arranged.reasons(note.id());
    }

    private String use(ColorNote note) {
        return Stream.of(note.zone().flatMap(study::zone).map(Zone::name).orElse(""), Purposes.words(note.purpose()))
                .filter(words -> !words.isBlank())
                .collect(Collectors.joining(", "));
    }
}
