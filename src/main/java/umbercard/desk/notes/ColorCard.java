package umbercard.desk.notes;

import java.awt.CardLayout;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.box.BoxPanel;
import umbercard.desk.session.Session;
import umbercard.desk.theme.Controls;
import umbercard.desk.theme.Keys;
import umbercard.desk.theme.PaperCard;
import umbercard.desk.theme.WordButton;
import umbercard.desk.trial.TrialDialog;
import umbercard.desk.zones.ZonesPage;
import umbercard.model.ColorNote;
import umbercard.model.Stick;
import umbercard.model.Thumbnail;
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
    private static final String OFFERS = "offers";
    private static final String ARRANGING = "arranging";
    private static final String ZONES = "zones";

    private final transient Session session;
    private final CardLayout pages = new CardLayout();
    private final CardLayout middlePages = new CardLayout();
    private final JPanel middle = new JPanel(middlePages);
    private final StripList strips;
    private final NoteEditor editor;
    private final ZoneLine zone;
    private final BoxPanel box;
    private final OffersPage offers;
    private final ArrangePage arranging;
    private final ZonesPage zonesPage;
    private final transient List<NoteAction> actions;
    private final Map<NoteAction, WordButton> words = new LinkedHashMap<>();
    private transient Consumer<Boolean> whenZones = open -> {};
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
        offers = new OffersPage(this::take, this::backToNotes);
        arranging = new ArrangePage(this::arrange, this::backToNotes);
        zonesPage = new ZonesPage(session, this::backToNotes);
        actions = List.of(
                action("open-box", "", this::openBox),
                action("zones", "", this::openZones),
                ofSelected("change", "ENTER", true, this::openEditor),
                ofSelected("duplicate", "ctrl D", false, strips::duplicateSelected),
                ofSelected("break", "ctrl ENTER", false, strips::turnBreak),
                ofSelected("keep", "ctrl K", false, () -> strips.editSelected(NoteEdits::turnPinned)),
                ofSelected("remove", "DELETE", false, strips::removeSelected),
                new NoteAction(
                        "arrange", "", true, () -> session.study().notes().size() > 1, this::openArranging),
                new NoteAction("trial", "", false, this::hasThumbnail, this::openTrial),
                offering(OfferKind.MATCHES, true),
                offering(OfferKind.TURN_SKY, false),
                offering(OfferKind.ECHO, false),
                offering(OfferKind.PART, false));
        bindKeys();
        middle.setOpaque(false);
        editor.setVisible(false);
        add(notesPage(), NOTES);
        add(box, BOX);
        add(offers, OFFERS);
        add(arranging, ARRANGING);
        add(zonesPage, ZONES);
        strips.addListSelectionListener(event -> selectionChanged());
        session.listen(changed -> {
            switch (changed) {
                case STUDY -> {
                    leaveWhatWasFound();
                    refresh();
                }
                case WORDS -> refresh();
                case SHOWN, PHOTOGRAPH -> box.refresh();
                case PREVIEW, FILE -> {}
            }
        });
        refresh();
    }

    private static NoteAction action(String name, String keys, Runnable run) {
        return new NoteAction(name, keys, false, () -> true, run);
    }

    private NoteAction ofSelected(String name, String keys, boolean opensGroup, Runnable run) {
        return new NoteAction(name, keys, opensGroup, () -> !strips.selected().isEmpty(), run);
    }

    private NoteAction offering(OfferKind kind, boolean opensGroup) {
        return new NoteAction(kind.key(), "", opensGroup, this::hasThumbnail, () -> offer(kind));
    }

    private boolean hasThumbnail() {
        return session.study().thumbnail(session.shown()).isPresent();
    }

    private void openTrial() {
        session.study().thumbnail(session.shown()).ifPresent(thumbnail -> TrialDialog.open(this, session, thumbnail));
    }

    private void offer(OfferKind kind) {
        session.study().thumbnail(session.shown()).ifPresent(thumbnail -> {
            boxOpen = false;
            turnTo(OFFERS);
            offers.ask(kind, new OfferKind.Asked(session.study(), thumbnail, session.photograph()));
        });
    }

    /** Puts notes on the card that were offered. They were found for the study as it was: their ids may be taken by now. */
    private void take(List<ColorNote> taken) {
        List<String> ids = session.study().newIds("n", taken.size());
        List<ColorNote> notes = new ArrayList<>();
        for (int i = 0; i < ids.size(); i++) {
            notes.add(taken.get(i).withId(ids.get(i)));
        }
        backToNotes();
        session.edit(NoteEdits.add(notes));
        strips.select(ids);
    }

    private void openZones() {
        boxOpen = false;
        turnTo(ZONES);
        zonesPage.begin(strips.first().flatMap(ColorNote::zone));
        whenZones.accept(true);
    }

    private void turnTo(String page) {
        if (zonesPage.isVisible() && !page.equals(ZONES)) {
            zonesPage.end();
            whenZones.accept(false);
        }
        pages.show(this, page);
    }

    /** Tells {@code listener} whenever the page of the zones is opened, and with false whenever it is closed. */
    public void whenZones(Consumer<Boolean> listener) {
        whenZones = listener;
    }

    /** What an open page has found belongs to the study as it was. */
    private void leaveWhatWasFound() {
        if (offers.isVisible() || arranging.isVisible()) {
            turnTo(boxOpen ? BOX : NOTES);
        }
    }

    private void openArranging() {
        Thumbnail anywhere = Thumbnail.empty("", "");
        boxOpen = false;
        turnTo(ARRANGING);
        arranging.ask(
                session.study(), session.study().thumbnail(session.shown()).orElse(anywhere));
    }

    private void arrange(List<ColorNote> order, Set<String> rulesOff) {
        backToNotes();
        session.edit(NoteEdits.arrange(order, rulesOff));
    }

    private void backToNotes() {
        turnTo(NOTES);
        strips.requestFocusInWindow();
    }

    /** Fills a menu with what can be done with the color notes; {@code first} is run before any of it. */
    public void offer(JPopupMenu menu, Runnable first) {
        NoteAction.fill(menu, actions, first);
    }

    private void bindKeys() {
        for (NoteAction action : actions) {
            if (!action.keys().isEmpty()) {
                Keys.bindWhile(action.possible(), strips, WHEN_FOCUSED, action.keys(), action.name(), action.run());
            }
        }
        JPopupMenu popup = new JPopupMenu();
        popup.setName("notes.popup");
        offer(popup, this::settle);
        strips.setComponentPopupMenu(popup);
    }

    private WordButton word(String name) {
        NoteAction action = actions.stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow();
        WordButton word = WordButton.onPaper("notes." + name, action.words(), action.description(), action.run());
        words.put(action, word);
        return word;
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
        page.add(word("open-box"), "split 6, growx 0, gaptop 8");
        page.add(word("zones"), "growx 0, gapleft 0");
        page.add(word("arrange"), "growx 0, gapleft 0");
        page.add(word("trial"), "growx 0, gapleft 0");
        page.add(word("change"), "growx 0, gapleft push");
        page.add(word("remove"), "growx 0, gapleft 4");
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
        words.forEach((action, word) -> word.setEnabled(action.possible().getAsBoolean()));
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
        if (zonesPage.isShowing()) {
            zonesPage.settle();
        }
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
        turnTo(BOX);
        box.open(strips.first().flatMap(ColorNote::zone));
    }

    /** Takes the box off the card again. */
    public void closeBox() {
        boxOpen = false;
        backToNotes();
    }

    /** Whether the box lies over the card. */
    public boolean isBoxOpen() {
        return boxOpen;
    }
}
