package umbercard.desk.notes;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.CardLayout;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.swing.ButtonGroup;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import umbercard.color.MunsellValue;
import umbercard.desk.session.Session;
import umbercard.desk.theme.Keys;
import umbercard.desk.theme.WordButton;
import umbercard.model.Box;
import umbercard.model.ColorNote;
import umbercard.model.Stick;
import umbercard.words.Words;

/**
 * The box, open over the color card: pressing a stick puts it on the card as the next strip. Stays open, so that several
 * can be picked.
 */
final class BoxPanel extends JPanel {
    private static final String STICKS = "sticks";
    private static final String MISSING = "missing";

    private final transient Session session;
    private final transient Supplier<Optional<ColorNote>> like;
    private final transient Consumer<String> added;
    private final CardLayout pages = new CardLayout();
    private final JPanel middle = new JPanel(pages);
    private final Tray tray;
    private final JLabel title = Controls.onPaper(new JLabel());
    private final JLabel hint = Controls.onPaper(new JLabel());
    private final JToggleButton byValue = toggle("by-value", false);
    private final JToggleButton asTheyLie = toggle("tray", true);
    private final WordButton openFile;

    /**
     * The box of the session's study.
     *
     * @param like the strip whose zone and purpose a new one takes over
     * @param added told the id of each new strip
     */
    BoxPanel(
            Session session,
            Supplier<Optional<ColorNote>> like,
            Consumer<String> added,
            Runnable close,
            Runnable openBoxFile) {
        super(new MigLayout("insets 10, gap 0, wrap 1", "[grow,fill]", "[][grow,fill][][]"));
        this.session = session;
        this.like = like;
        this.added = added;
        setOpaque(false);
        setName("notes.box");
        getAccessibleContext().setAccessibleName(Words.say("notes.box.name"));
        getAccessibleContext().setAccessibleDescription(Words.say("notes.box.description"));
        tray = new Tray(this::pick, this::look);
        openFile = word("file", openBoxFile);
        WordButton closing = word("close", close);
        middle.setOpaque(false);
        middle.add(Controls.scroller(tray, true), STICKS);
        middle.add(missing(), MISSING);
        title.putClientProperty(FlatClientProperties.STYLE, "font: $semibold.font");
        hint.setName("notes.box.hint");
        group();
        add(title, "split 3, growx, h 28!, gapleft 6");
        add(byValue, "growx 0");
        add(asTheyLie, "growx 0, gapleft 4");
        add(middle, "wmin 0, gaptop 6, gapleft 6, gapright 6");
        add(hint, "h 22!, gaptop 6, gapleft 6, wmin 0");
        add(closing, "growx 0, alignx left, gaptop 4");
        Keys.bind(this, WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, "ESCAPE", "close", close);
    }

    private static WordButton word(String key, Runnable action) {
        return WordButton.onPaper(
                "notes.box." + key,
                Words.say("notes.box." + key),
                Words.say("notes.box." + key + ".description"),
                action);
    }

    private JToggleButton toggle(String key, boolean lying) {
        JToggleButton toggle = Controls.onPaper(new JToggleButton(Words.say("notes.box." + key), !lying));
        toggle.setName("notes.box." + key);
        toggle.setToolTipText(Words.say("notes.box." + key + ".description"));
        toggle.getAccessibleContext().setAccessibleDescription(Words.say("notes.box." + key + ".description"));
        toggle.putClientProperty(FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_BORDERLESS);
        toggle.addActionListener(event -> tray.lay(lying));
        return toggle;
    }

    private void group() {
        ButtonGroup group = new ButtonGroup();
        group.add(byValue);
        group.add(asTheyLie);
    }

    private JPanel missing() {
        JPanel page = new JPanel(new MigLayout("insets 0, wrap 1, align center center"));
        page.setOpaque(false);
        page.add(Controls.onPaper(new JLabel(Words.say("notes.box.missing"))), "center");
        page.add(openFile, "center, gaptop 4");
        return page;
    }

    /** Shows the study's box, and which of its sticks are on the card. */
    void refresh() {
        List<Stick> sticks = session.study().box().map(Box::sticks).orElse(List.of());
        boolean some = !sticks.isEmpty();
        title.setText(session.study().box().map(Box::name).orElse(" "));
        byValue.setVisible(some);
        asTheyLie.setVisible(some);
        tray.show(sticks, this::words, stick -> !numbers(stick).isEmpty());
        pages.show(middle, some ? STICKS : MISSING);
        hint.setText(some ? Words.say("notes.box.hint") : " ");
    }

    /** Puts the keyboard on a stick, or on what opens a box. */
    void begin() {
        if (session.study().box().map(Box::sticks).orElse(List.of()).isEmpty()) {
            openFile.requestFocusInWindow();
        } else {
            tray.begin();
        }
    }

    private void pick(Stick stick) {
        String id = session.study().newId("n");
        session.edit(NoteEdits.add(id, stick, like.get()));
        added.accept(id);
        hint.setText(words(stick));
    }

    private void look(Optional<Stick> stick) {
        hint.setText(stick.map(this::words).orElseGet(() -> Words.say("notes.box.hint")));
    }

    private String numbers(Stick stick) {
        List<ColorNote> notes = session.study().notes();
        return IntStream.range(0, notes.size())
                .filter(i -> notes.get(i).stick().id().equals(stick.id()))
                .mapToObj(i -> Integer.toString(i + 1))
                .collect(Collectors.joining(", "));
    }

    private String words(Stick stick) {
        String numbers = numbers(stick);
        String words = numbers.isEmpty()
                ? Words.say("notes.box.stick", StripWords.stick(stick), MunsellValue.of(stick.color()))
                : Words.say("notes.box.used", StripWords.stick(stick), MunsellValue.of(stick.color()), numbers);
        return stick.state() == Stick.State.OWNED
                ? words
                : Words.say("notes.box." + stick.state().key(), words);
    }
}
