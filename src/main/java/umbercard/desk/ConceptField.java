package umbercard.desk;

import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Insets;
import java.awt.KeyboardFocusManager;
import java.awt.RenderingHints;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.Set;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import umbercard.desk.session.Session;
import umbercard.desk.session.Session.Change;
import umbercard.desk.theme.Theme;
import umbercard.door.Edit;
import umbercard.words.Message;
import umbercard.words.Words;

/**
 * The concept in large type over both cards, edited in place. Enter or leaving the field keeps it, Escape takes back what
 * was typed. An empty one says kindly what belongs there.
 */
final class ConceptField extends JTextArea {
    private final transient Session session;
    private String filled = "";

    ConceptField(Session session) {
        this.session = session;
        setName("concept");
        setLineWrap(true);
        setWrapStyleWord(true);
        setOpaque(false);
        setBorder(BorderFactory.createEmptyBorder(2, 0, 2, 0));
        setMargin(new Insets(0, 0, 0, 0));
        getAccessibleContext().setAccessibleName(Words.say("desk.concept.name"));
        getAccessibleContext().setAccessibleDescription(Words.say("desk.concept.empty"));
        setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, Set.of(KeyStroke.getKeyStroke("TAB")));
        setFocusTraversalKeys(
                KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, Set.of(KeyStroke.getKeyStroke("shift TAB")));
        bind("ENTER", "keep", this::transferFocus);
        bind("ESCAPE", "take-back", this::takeBack);
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                keep();
            }
        });
        session.listen(change -> {
            if (change == Change.STUDY) {
                fill();
            }
        });
        fill();
    }

    private void bind(String stroke, String name, Runnable action) {
        getInputMap().put(KeyStroke.getKeyStroke(stroke), name);
        getActionMap().put(name, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                action.run();
            }
        });
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setFont(Theme.font("defaultFont").deriveFont(Font.PLAIN, 21f));
    }

    /** Shows the study's concept, unless another is being typed. */
    private void fill() {
        boolean typing = isFocusOwner() && !getText().equals(filled);
        if (!typing) {
            takeBack();
        }
    }

    private void takeBack() {
        filled = session.study().concept();
        if (!filled.equals(getText())) {
            setText(filled);
            setCaretPosition(0);
        }
    }

    /** Keeps what is typed as the study's concept. */
    void keep() {
        String concept = getText().strip().replaceAll("\\s+", " ");
        filled = getText();
        if (!concept.equals(session.study().concept())) {
            session.edit(new Edit(Message.of("desk.concept.done"), study -> study.withConcept(concept)));
        }
        takeBack();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        if (getText().isEmpty() && !isFocusOwner()) {
            Graphics2D g = (Graphics2D) graphics.create();
            g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            g.setFont(getFont());
            g.setColor(Theme.color("Umbercard.onSurroundSoft"));
            g.drawString(
                    Words.say("desk.concept.empty"),
                    getInsets().left,
                    getInsets().top + g.getFontMetrics().getAscent());
            g.dispose();
        }
    }
}
