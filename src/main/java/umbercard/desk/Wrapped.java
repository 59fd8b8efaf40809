package umbercard.desk;

import javax.swing.JTextArea;
import javax.swing.UIManager;

/** A sentence that wraps instead of widening its window. */
final class Wrapped {
    private static final int COLUMNS = 42;

    private Wrapped() {}

    static JTextArea words(String sentence) {
        JTextArea words = new JTextArea(sentence);
        words.setName("sentence");
        words.setEditable(false);
        words.setFocusable(false);
        words.setOpaque(false);
        words.setLineWrap(true);
        words.setWrapStyleWord(true);
        words.setFont(UIManager.getFont("Label.font"));
        words.setColumns(COLUMNS);
        words.setSize(words.getPreferredSize());
        return words;
    }
}
