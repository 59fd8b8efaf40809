package umbercard.desk.box;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import umbercard.color.MunsellValue;
import umbercard.model.ColorNote;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.edit.Sticks;
import umbercard.words.Words;

/**
 * How a stick stands in the box.
 *
 * @param words all of it, as a screen reader says it
 * @param onCard whether a strip of it is on the color card
 * @param setOut whether it is set out for this painting
 * @param sought whether it is among those that are looked for; all are while nothing is
 */
record Standing(String words, boolean onCard, boolean setOut, boolean sought, Stick.State state) {
    /** Before anything is known of it. */
    static final Standing UNKNOWN = new Standing("", false, false, true, Stick.State.OWNED);

    /** How a stick stands in a study. */
    static Standing of(Stick stick, Study study, boolean sought) {
        boolean setOut = Sticks.isSetOut(study, stick.id());
        String numbers = numbers(stick, study.notes());
        String words = Stream.of(
                        Words.say("box.stick", StickWords.stick(stick), MunsellValue.of(stick.color())),
                        stick.hardness()
                                .map(hardness -> Words.say("box.hardness." + hardness.key()))
                                .orElse(""),
                        stick.state() == Stick.State.OWNED
                                ? ""
                                : Words.say("box.state." + stick.state().key()),
                        setOut ? Words.say("box.is-set-out") : "",
                        numbers.isEmpty() ? "" : Words.say("box.is-on-card", numbers))
                .filter(some -> !some.isEmpty())
                .collect(Collectors.joining("   "));
        return new Standing(words, !numbers.isEmpty(), setOut, sought, stick.state());
    }

    /** The strips that are laid with the stick, counted from 1. */
    private static String numbers(Stick stick, List<ColorNote> notes) {
        return IntStream.range(0, notes.size())
                .filter(i -> notes.get(i).stick().id().equals(stick.id()))
                .mapToObj(i -> Integer.toString(i + 1))
                .collect(Collectors.joining(", "));
    }
}
