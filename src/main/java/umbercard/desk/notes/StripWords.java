package umbercard.desk.notes;

import java.util.List;
import java.util.stream.Stream;
import umbercard.color.MunsellValue;
import umbercard.desk.box.StickWords;
import umbercard.model.ColorNote;
import umbercard.model.Study;
import umbercard.model.Zone;
import umbercard.notes.Purposes;
import umbercard.words.Words;

/** What stands on a strip, in words. */
final class StripWords {
    private StripWords() {}

    /** Zone, purpose, direction, touch, a layer over the first, and that it is kept in place; what is not set is left out. */
    static String use(Study study, ColorNote note) {
        return String.join(" · ", uses(study, note));
    }

    private static List<String> uses(Study study, ColorNote note) {
        return Stream.of(
                        note.zone().flatMap(study::zone).map(Zone::name).orElse(""),
                        Purposes.words(note.purpose()),
                        Words.say("trade.direction." + note.direction().key()),
                        Words.say("trade.touch." + note.touch().key()),
                        note.layer() > 1 ? Words.say("notes.strip.layer", Integer.toString(note.layer())) : "",
                        note.pinned() ? Words.say("notes.strip.kept") : "")
                .filter(words -> !words.isBlank())
                .toList();
    }

    /** The whole strip as a screen reader says it. */
    static String spoken(Study study, ColorNote note, int number) {
        String sitting = beginsSitting(note, number) ? Words.say("notes.strip.sitting") + ". " : "";
        String strip = Words.say(
                "notes.strip.spoken",
                Integer.toString(number),
                StickWords.stick(note.stick()),
                MunsellValue.of(note.stick().color()),
                String.join(", ", uses(study, note)));
        return sitting + strip + (note.words().isBlank() ? "" : ". " + note.words());
    }

    /**
     * Whether a break stands over a strip.
     *
     * @param number its place, counted from 1: over the first there is none
     */
    static boolean beginsSitting(ColorNote note, int number) {
        return note.breakBefore() && number > 1;
    }
}
