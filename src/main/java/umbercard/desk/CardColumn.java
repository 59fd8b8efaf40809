package umbercard.desk;

import com.formdev.flatlaf.FlatClientProperties;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JRootPane;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.canvas.NotanCard;
import umbercard.desk.framing.FrameBench;
import umbercard.desk.session.Session;
import umbercard.desk.theme.Keys;
import umbercard.words.Words;

/**
 * The middle of the desk: the notan card with its instruments and rules, or, in their places, the photograph while it is
 * framed. One word goes from one to the other.
 */
final class CardColumn extends JPanel {
    private final NotanCard card;
    private final transient FrameBench bench;
    private final JToggleButton word = new JToggleButton(Words.say("framing.frame"));
    private final transient List<JComponent> ofCard;
    private final transient List<JComponent> ofFraming;

    CardColumn(Session session, NotanCard card, InstrumentBar instruments, WorkStrip work) {
        super(new MigLayout("insets 0, fill, wrap 1, hidemode 3", "[grow, fill]", "[grow, fill]8[]2[]"));
        this.card = card;
        setOpaque(false);
        bench = new FrameBench(session, () -> frame(false));
        ReferenceRules rules = new ReferenceRules(session, card);
        ofCard = List.of(card, instruments, rules);
        ofFraming = List.of(bench.view(), bench.words(), bench.facts());
        add(card, "cell 0 0, grow, wmin 320, hmin 220");
        add(bench.view(), "cell 0 0, grow, wmin 320, hmin 220");
        JPanel words = new JPanel(new MigLayout("insets 0, fillx, gapx 6, hidemode 3", "[][][grow, right]", "[]"));
        words.setOpaque(false);
        words.add(framing());
        words.add(instruments, "split 2");
        words.add(bench.words());
        words.add(work, "wmin 0");
        add(words, "cell 0 1, wmin 0");
        add(rules, "cell 0 2, wmin 0");
        add(bench.facts(), "cell 0 2, growx 0, wmin 0");
        bench.listen(this::follow);
        follow();
        put(false);
    }

    private JToggleButton framing() {
        word.setName("frame");
        word.putClientProperty(FlatClientProperties.STYLE_CLASS, "word");
        word.putClientProperty(FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_BORDERLESS);
        word.setToolTipText(Words.say("desk.instrument.tip", Words.say("framing.frame.tip"), "V"));
        word.getAccessibleContext().setAccessibleDescription(word.getToolTipText());
        word.addActionListener(event -> frame(word.isSelected()));
        return word;
    }

    private void follow() {
        word.setEnabled(bench.isPossible());
        if (!bench.isPossible() && word.isSelected()) {
            frame(false);
        }
    }

    /** Lets a letter go from the card to the photograph and back, while nothing in the window takes text. */
    void bindKeys(JRootPane window) {
        Keys.bindWhile(
                () -> word.isEnabled() && !InstrumentBar.takesText(),
                window,
                WHEN_IN_FOCUSED_WINDOW,
                "V",
                "frame",
                () -> frame(!word.isSelected()));
    }

    /** Shows the photograph to be framed, if there is one, or the card again, and gives it the keys. */
    void frame(boolean wanted) {
        boolean framing = wanted && bench.isPossible();
        put(framing);
        if (framing) {
            bench.begin();
        } else {
            bench.end();
            card.requestFocusInWindow();
        }
    }

    private void put(boolean framing) {
        word.setSelected(framing);
        ofCard.forEach(part -> part.setVisible(!framing));
        ofFraming.forEach(part -> part.setVisible(framing));
        revalidate();
        repaint();
    }

    /** Whether the pictures shown are up to date. */
    boolean isSettled() {
        return card.isSettled() && bench.isSettled();
    }
}
