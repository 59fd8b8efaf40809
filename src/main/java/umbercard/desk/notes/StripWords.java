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

    /** Zone, purpose, direction and touch; what is not set is left out. */
    static String use(Study study, ColorNote note) {
        return String.join(" · ", uses(study, note));
    }

    private static List<String> uses(Study study, ColorNote note) {
        return Stream.of(
                        note.zone().flatMap(study::zone).map(Zone::name).orElse(""),
                        Purposes.words(note.purpose()),
                        Words.say("trade.direction." + note.direction().key()),
                        Words.say("trade.touch." + note.touch().key()))
                .filter(words -> !words.isBlank())
                .toList();
    }

    /** The whole strip as a screen reader says it. */
    static String spoken(Study study, ColorNote note, int number) {
        return Words.say(
                "notes.strip.spoken",
                Integer.toString(number),
                StickWords.stick(note.stick()),
                MunsellValue.of(note.stick().color()),
                String.join(", ", uses(study, note)));
    }
}
