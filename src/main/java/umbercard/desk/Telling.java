package umbercard.desk;

import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import javax.swing.JFrame;
import javax.swing.JOptionPane;
import umbercard.words.Trouble;
import umbercard.words.Words;

/** Tells and asks the painter, in one sentence each. */
final class Telling {
    private static final Logger LOG = Logger.getLogger(Telling.class.getName());

    /** What the painter wants done with changes that are not saved yet. */
    enum Unsaved {
        SAVE,
        LEAVE,
        STAY
    }

    private final JFrame window;

    Telling(JFrame window) {
        this.window = window;
    }

    /** Says what went wrong: the trouble's own sentence; for anything unforeseen a plain one, with the details in the log. */
    void failed(Exception failure) {
        if (failure instanceof Trouble trouble) {
            LOG.log(Level.FINE, "told the painter", trouble);
            say(Words.say(trouble.said()), JOptionPane.WARNING_MESSAGE);
        } else if (failure.getCause() instanceof OutOfMemoryError) {
            LOG.log(Level.FINE, "out of memory", failure);
            say(Words.say("desk.no-memory"), JOptionPane.WARNING_MESSAGE);
        } else {
            LOG.log(Level.SEVERE, "unforeseen", failure);
            say(Words.say("desk.failed"), JOptionPane.WARNING_MESSAGE);
        }
    }

    /** Says something that needs no answer. */
    void say(String sentence) {
        say(sentence, JOptionPane.PLAIN_MESSAGE);
    }

    private void say(String sentence, int kind) {
        JOptionPane.showMessageDialog(window, Wrapped.words(sentence), Words.say("desk.name"), kind);
    }

    /** Asks for one of several answers, all said by key; the place of the one chosen, or less than 0. */
    int ask(String question, String... answers) {
        Object[] said = Stream.of(answers).map(Words::say).toArray();
        return JOptionPane.showOptionDialog(
                window,
                Wrapped.words(Words.say(question)),
                Words.say("desk.name"),
                JOptionPane.DEFAULT_OPTION,
                JOptionPane.PLAIN_MESSAGE,
                null,
                said,
                said[0]);
    }

    Unsaved askUnsaved(String name) {
        Object[] answers = {
            Words.say("desk.unsaved.save"), Words.say("desk.unsaved.leave"), Words.say("desk.unsaved.stay")
        };
        int answer = JOptionPane.showOptionDialog(
                window,
                Wrapped.words(Words.say("desk.unsaved.ask", name)),
                Words.say("desk.name"),
                JOptionPane.DEFAULT_OPTION,
                JOptionPane.PLAIN_MESSAGE,
                null,
                answers,
                answers[0]);
        return switch (answer) {
            case 0 -> Unsaved.SAVE;
            case 1 -> Unsaved.LEAVE;
            default -> Unsaved.STAY;
        };
    }

    /** Asks whether to replace a file; the question is said by {@code key.ask}. Keeping it is the answer at hand. */
    boolean askReplace(String key, String name) {
        Object[] answers = {Words.say("desk.replace.yes"), Words.say("desk.replace.no")};
        return JOptionPane.showOptionDialog(
                        window,
                        Wrapped.words(Words.say(key + ".ask", name)),
                        Words.say("desk.name"),
                        JOptionPane.DEFAULT_OPTION,
                        JOptionPane.PLAIN_MESSAGE,
                        null,
                        answers,
                        answers[1])
                == 0;
    }
}
