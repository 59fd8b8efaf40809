package umbercard.desk.notes;

import java.awt.CardLayout;
import java.util.List;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.box.BoxPanel;
import umbercard.desk.session.Session;
import umbercard.desk.theme.Controls;
import umbercard.desk.theme.Keys;
import umbercard.desk.theme.PaperCard;
import umbercard.desk.theme.WordButton;
import umbercard.model.ColorNote;
import umbercard.model.Stick;
import umbercard.words.Words;

/**
 * The color card: the color notes as strips in the order of application, and the box that lies over them while sticks are
 * picked. Event thread only.
 */
public final class ColorCard extends PaperCard {
    private static final String STRIPS = "strips";
    private static final String EMPTY = "empty";
    private static final String NOTES = "notes";
    private static final String BOX = "box";

    private final transient Session session;
    private final CardLayout pages = new CardLayout();
    private final CardLayout middlePages = new CardLayout();
    private final JPanel middle = new JPanel(middlePages);
    private final StripList strips;
    private final NoteEditor editor;
    private final ZoneLine zone;
    private final BoxPanel box;
    private final WordButton change;
    private final WordButton remove;
    private boolean boxOpen;

    /** The card of the session's study; {@code openBoxFile} asks for a box file when the study has none. */
    public ColorCard(Session session, Runnable openBoxFile) {
        super(new CardLayout());
        this.session = session;
        setLayout(pages);
        setName("notes.card");
        getAccessibleContext().setAccessibleName(Words.say("notes.card.name"));
        getAccessibleContext().setAccessibleDescription(Words.say("notes.card.description"));
        strips = new StripList(session, this::openEditor);
        editor = new NoteEditor(session, this::closeEditor);
        box = new BoxPanel(session, this::add, this::closeBox, openBoxFile);
        zone = new ZoneLine(session, this::keepInSight);
        change = word("change", this::openEditor);
        remove = word("remove", strips::removeSelected);
        middle.setOpaque(false);
        editor.setVisible(false);
        add(notesPage(), NOTES);
        add(box, BOX);
        strips.addListSelectionListener(event -> selectionChanged());
        session.listen(changed -> {
            switch (changed) {
                case STUDY, WORDS -> refresh();
                case SHOWN, PHOTOGRAPH -> box.refresh();
                case PREVIEW, FILE -> {}
            }
        });
        refresh();
    }

    private static WordButton word(String key, Runnable action) {
        return WordButton.onPaper(
                "notes." + key, Words.say("notes." + key), Words.say("notes." + key + ".description"), action);
    }

    private JPanel notesPage() {
        JScrollPane scroller = Controls.scroller(strips, false);
        JLabel empty = Controls.onPaper(new JLabel(Words.say("notes.empty"), JLabel.CENTER));
        empty.setName("notes.empty");
        middle.add(scroller, STRIPS);
        middle.add(empty, EMPTY);
        JPanel page = new JPanel(
                new MigLayout("insets 10 10 10 10, gap 0, hidemode 3, wrap 1", "[grow,fill]", "[grow,fill][][][]"));
        page.setOpaque(false);
        page.add(middle, "wmin 0");
        page.add(zone, "wmin 0, gapleft 6, gaptop 8");
        page.add(editor, "gapleft 6, gaptop 8");
        page.add(word("open-box", this::openBox), "split 3, growx 0, gaptop 8");
        page.add(change, "growx 0, gapleft 8");
        page.add(remove, "growx 0, gapleft push");
        Keys.bindWhile(
                editor::isVisible, page, WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, "ESCAPE", "close", this::closeEditor);
        return page;
    }

    private void refresh() {
        strips.refresh();
        middlePages.show(middle, session.study().notes().isEmpty() ? EMPTY : STRIPS);
        box.refresh();
        selectionChanged();
    }

    private void selectionChanged() {
        List<ColorNote> selected = strips.selected();
        change.setEnabled(!selected.isEmpty());
        remove.setEnabled(!selected.isEmpty());
        zone.show(strips.first());
        if (selected.isEmpty()) {
            closeEditor();
        } else if (editor.isVisible()) {
            editor.show(selected);
        }
    }

    private void keepInSight() {
        validate();
        strips.select(selectedIds());
    }

    private List<String> selectedIds() {
        return strips.selected().stream().map(ColorNote::id).toList();
    }

    private void openEditor() {
        if (!strips.selected().isEmpty()) {
            editor.show(strips.selected());
            editor.setVisible(true);
            keepInSight();
            editor.begin();
        }
    }

    private void closeEditor() {
        if (editor.isVisible()) {
            editor.setVisible(false);
            strips.requestFocusInWindow();
        }
    }

    /** Takes what is being typed, as far as it is; the editor stays open and the focus where it is. */
    public void settle() {
        editor.settle();
    }

    /** Puts a stick on the card as the next strip: in that zone, else in the one of the selected strip and for its purpose. */
    private void add(Stick stick, Optional<String> zone) {
        String id = session.study().newId("n");
        session.edit(NoteEdits.add(id, stick, strips.first(), zone));
        strips.select(List.of(id));
    }

    /** Lays the box over the card. */
    public void openBox() {
        boxOpen = true;
        pages.show(this, BOX);
        box.open(strips.first().flatMap(ColorNote::zone));
    }

    /** Takes the box off the card again. */
    public void closeBox() {
        boxOpen = false;
        pages.show(this, NOTES);
        strips.requestFocusInWindow();
    }

    /** Whether the box lies over the card. */
    public boolean isBoxOpen() {
        return boxOpen;
    }
}
