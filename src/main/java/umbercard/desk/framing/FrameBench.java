package umbercard.desk.framing;

import com.formdev.flatlaf.FlatClientProperties;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.session.Session;
import umbercard.desk.theme.WordButton;
import umbercard.model.Frame;
import umbercard.model.Framing;
import umbercard.words.Words;

/**
 * Where the photograph is framed: the view of it, the words that act on the frame, and the figures. The three stand in the
 * places of the card, its instruments and its rules while the painter frames. Event thread only.
 */
public final class FrameBench {
    private final Viewfinder finder;
    private final FramingView view;
    private final JPanel words = row("framing-words");
    private final JPanel facts = row("framing-facts");
    private final JToggleButton mark;
    private final WordButton level;
    private final JToggleButton inside;
    private final JToggleButton own;
    private final JLabel figures = new JLabel(" ");

    /**
     * The bench for the frame of the thumbnail on the card.
     *
     * @param done run when the painter is done with framing, by a word or a key
     */
    public FrameBench(Session session, Runnable done) {
        finder = new Viewfinder(session);
        view = new FramingView(session, finder, done);
        mark = toggle("mark", on -> view.mark(on));
        level = word("level", finder::level);
        inside = toggle("inside", finder::keepInside);
        own = toggle("own", finder::own);
        words.add(mark);
        words.add(level);
        words.add(word("upright", finder::upright));
        words.add(word("mirror", finder::mirror));
        words.add(word("largest", finder::largest));
        words.add(word("done", done));
        facts.add(inside);
        facts.add(own);
        figures.setName("framing-figures");
        facts.add(figures, "gapleft 8");
        finder.listen(this::fill);
        fill();
    }

    private static JPanel row(String name) {
        JPanel row = new JPanel(new MigLayout("insets 0, gapx 4"));
        row.setName(name);
        row.setOpaque(false);
        return row;
    }

    private WordButton word(String key, Runnable action) {
        return WordButton.onDesk(
                "framing-" + key, Words.say("framing." + key), Words.say("framing." + key + ".tip"), () -> {
                    action.run();
                    view.requestFocusInWindow();
                });
    }

    private JToggleButton toggle(String key, Consumer<Boolean> action) {
        JToggleButton word = new JToggleButton(Words.say("framing." + key));
        word.setName("framing-" + key);
        word.putClientProperty(FlatClientProperties.STYLE_CLASS, "word");
        word.putClientProperty(FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_BORDERLESS);
        word.setToolTipText(Words.say("framing." + key + ".tip"));
        word.getAccessibleContext().setAccessibleDescription(word.getToolTipText());
        word.addActionListener(event -> {
            action.accept(word.isSelected());
            view.requestFocusInWindow();
        });
        return word;
    }

    private void fill() {
        mark.setSelected(view.marking().isPresent());
        level.setEnabled(finder.ownHorizon().isPresent());
        inside.setSelected(finder.keepsInside());
        own.setSelected(finder.isOwn());
        figures.setText(finder.framing()
                .flatMap(framing -> finder.seen().map(frame -> figures(framing, frame)))
                .orElse(" "));
    }

    private static String figures(Framing framing, Frame frame) {
        return Words.say(
                "framing.figures",
                frame.tilt(),
                framing.shareUsed(frame),
                Math.abs(frame.tilt()) < 0.05 ? 0 : 1,
                framing.shareBare(frame),
                framing.shareBare(frame) < 0.005 ? 0 : 1);
    }

    /** Whether there is a photograph to frame. */
    public boolean isPossible() {
        return finder.isPossible();
    }

    /** Runs {@code listener} whenever {@link #isPossible()} may have changed. */
    public void listen(Runnable listener) {
        finder.listen(listener);
    }

    /** The photograph with the frame on it. */
    public JComponent view() {
        return view;
    }

    /** The words that act on the frame. */
    public JComponent words() {
        return words;
    }

    /** What holds of the frame. */
    public JComponent facts() {
        return facts;
    }

    /** Begins with nothing half done, and takes the keys. */
    public void begin() {
        view.rest();
        view.requestFocusInWindow();
    }

    /** Drops what is half done. */
    public void end() {
        view.rest();
    }

    /** Whether the picture shown is up to date. */
    public boolean isSettled() {
        return view.isSettled();
    }
}
