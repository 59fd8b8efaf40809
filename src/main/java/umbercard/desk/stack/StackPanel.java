package umbercard.desk.stack;

import com.formdev.flatlaf.FlatClientProperties;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.compare.Comparison;
import umbercard.desk.session.Session;
import umbercard.desk.theme.WordButton;
import umbercard.door.Reading;
import umbercard.kernel.Plugins;
import umbercard.model.Thumbnail;
import umbercard.words.Words;

/**
 * The thumbnails as a stack of tabbed cards, each with its little notan, dark share and horizon height. Event thread only.
 */
public final class StackPanel extends JPanel {
    private final transient Session session;
    private final StackList list;
    private final transient Shares shares;
    private final WordButton copy = word("copy", this::addCopy);
    private final transient Plugins<Reading> readings;
    private final WordButton compare = word("compare", this::compare);
    private final WordButton choose = word("choose", this::choose);

    /**
     * The stack of the session's study.
     *
     * @param readings by which thumbnails are compared
     */
    public StackPanel(Session session, Plugins<Reading> readings) {
        super(new MigLayout("insets 0, gap 0, wrap 1", "[132!,left]", "[grow,fill][]0[]"));
        this.session = session;
        this.readings = readings;
        setOpaque(false);
        setName("stack");
        shares = new Shares(this::repaint);
        list = new StackList(session, shares);
        JScrollPane scroller = new JScrollPane(
                list, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroller.setBorder(BorderFactory.createEmptyBorder());
        scroller.setOpaque(false);
        scroller.getViewport().setOpaque(false);
        scroller.getVerticalScrollBar().putClientProperty(FlatClientProperties.STYLE, "width: 8");
        add(scroller, "w 132!");
        add(word("another", this::addEmpty), "split 2, gaptop 4, gapleft 2");
        add(compare, "gaptop 4, gapleft 0");
        add(copy, "split 2, gapleft 2");
        add(choose, "gapleft 4");
        session.listen(this::changed);
        follow();
    }

    private static WordButton word(String key, Runnable action) {
        return WordButton.onDesk(
                "stack." + key, Words.say("stack." + key), Words.say("stack." + key + ".description"), action);
    }

    private void changed(Session.Change change) {
        switch (change) {
            case STUDY, PREVIEW, SHOWN -> follow();
            case PHOTOGRAPH, FILE, WORDS -> {}
        }
    }

    private void follow() {
        list.follow();
        shares.follow(session.seen());
        copy.setEnabled(session.thumbnail().isPresent());
        compare.setEnabled(session.study().thumbnails().size() > 1);
        boolean isChosen =
                session.study().chosen().filter(session.shown()::equals).isPresent();
        choose.setEnabled(session.thumbnail().isPresent() && !isChosen);
    }

    /** Takes the name that is being typed, as far as it is; its field stays open and the focus where it is. */
    public void settle() {
        list.settle();
    }

    private void addEmpty() {
        Thumbnail another = StackEdits.another(session.study());
        session.edit(StackEdits.addEmpty(another));
        session.show(another.id());
    }

    private void addCopy() {
        session.study().thumbnail(session.shown()).ifPresent(original -> {
            Thumbnail copied = StackEdits.copy(session.study(), original);
            session.edit(StackEdits.addCopy(copied, original));
            session.show(copied.id());
        });
    }

    private void compare() {
        settle();
        Comparison.open(this, session, readings, thumbnail -> session.edit(StackEdits.choose(thumbnail)));
    }

    private void choose() {
        list.choose();
        list.requestFocusInWindow();
    }
}
