package umbercard.desk.theme;

import com.formdev.flatlaf.FlatClientProperties;
import javax.swing.JButton;

/** A word to press: no frame until the pointer or the focus is on it. */
public final class WordButton extends JButton {
    private WordButton(String style, String name, String words, String description, Runnable action) {
        super(words);
        setName(name);
        getAccessibleContext().setAccessibleDescription(description);
        setToolTipText(description);
        putClientProperty(FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_BORDERLESS);
        putClientProperty(FlatClientProperties.STYLE_CLASS, style);
        addActionListener(event -> action.run());
    }

    /**
     * A word on a card.
     *
     * @param description what pressing it does, for screen readers and as a hint
     */
    public static WordButton onPaper(String name, String words, String description, Runnable action) {
        return new WordButton("paper", name, words, description, action);
    }

    /**
     * A word on the desk between the cards.
     *
     * @param description what pressing it does, for screen readers and as a hint
     */
    public static WordButton onDesk(String name, String words, String description, Runnable action) {
        return new WordButton("word", name, words, description, action);
    }
}
