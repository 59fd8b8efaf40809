package umbercard.desk;

import java.awt.BorderLayout;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import javax.swing.JFrame;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import umbercard.words.Trouble;
import umbercard.words.Words;

/** Tells and asks the painter, in one sentence each. */
final class Telling {
    private static final Logger LOG = Logger.getLogger(Telling.class.getName());

    private static final int LINES_AT_ONCE = 10;
    private static final int GAP = 8;

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

    /** Says something that needs no answer, and below it, to scroll through if there is much, lines that say more. */
    void list(String sentence, List<String> lines) {
        JTextArea list = Wrapped.words(String.join("\n", lines));
        list.setName("lines");
        list.setFocusable(true);
        list.setRows(Math.min(LINES_AT_ONCE, lines.size() + 1));
        list.setCaretPosition(0);
        JPanel panel = new JPanel(new BorderLayout(0, GAP));
        panel.add(Wrapped.words(sentence), BorderLayout.NORTH);
        panel.add(new JScrollPane(list), BorderLayout.CENTER);
        JOptionPane.showMessageDialog(window, panel, Words.say("desk.name"), JOptionPane.PLAIN_MESSAGE);
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
