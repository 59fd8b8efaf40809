package umbercard.desk.notes;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.CardLayout;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.box.StickWords;
import umbercard.desk.session.Session;
import umbercard.desk.theme.Controls;
import umbercard.desk.theme.WordButton;
import umbercard.door.Edit;
import umbercard.model.ColorNote;
import umbercard.model.Zone;
import umbercard.notes.Purposes;
import umbercard.words.Words;

/** The choices of one strip: zone, purpose, stroke direction, touch. Each change is an edit of its own. */
final class NoteEditor extends JPanel {
    private static final String CHOICES = "choices";
    private static final String ZONE = "zone";

    /** A line of the list of zones: a zone, none, or a new one. */
    private record ZoneItem(Optional<String> id, String words, boolean fresh) {}

    private final transient Session session;
    private final CardLayout pages = new CardLayout();
    private final JLabel title = Controls.onPaper(new JLabel());
    private final JComboBox<ZoneItem> zone = Controls.choice("notes.editor.zone", new ZoneItem[0], ZoneItem::words);
    private final JComboBox<String> purpose = Controls.choice("notes.editor.purpose", purposes(), words -> words);
    private final JComboBox<ColorNote.Direction> direction = Controls.choice(
            "notes.editor.direction",
            ColorNote.Direction.values(),
            choice -> Words.say("trade.direction." + choice.key()));
    private final JComboBox<ColorNote.Touch> touch = Controls.choice(
            "notes.editor.touch", ColorNote.Touch.values(), choice -> Words.say("trade.touch." + choice.key()));
    private final ZoneForm zoneForm;
    private final WordButton done;
    private Optional<ColorNote> note = Optional.empty();
    private boolean filling;

    NoteEditor(Session session, Runnable close) {
        this.session = session;
        setLayout(pages);
        setOpaque(false);
        setName("notes.editor");
        getAccessibleContext().setAccessibleName(Words.say("notes.editor.name"));
        purpose.setEditable(true);
        zoneForm = new ZoneForm(this::addZone, this::showChoices);
        done = WordButton.onPaper(
                "notes.editor.done", Words.say("notes.editor.done"), Words.say("notes.editor.done.description"), close);
        add(choices(), CHOICES);
        add(zoneForm, ZONE);
        listen();
    }

    private static String[] purposes() {
        List<String> words = new ArrayList<>(List.of(""));
        Purposes.KEYS.forEach(key -> words.add(Purposes.words(key)));
        return words.toArray(String[]::new);
    }

    private JPanel choices() {
        JPanel page = new JPanel(new MigLayout("insets 0 0 0 6, gap 12 2, wrap 2", "[grow,fill,sg][grow,fill,sg]"));
        page.setOpaque(false);
        title.putClientProperty(FlatClientProperties.STYLE, "font: $semibold.font");
        page.add(title, "span, split 2, growx, h 26!");
        page.add(done, "growx 0, pad 0 6 0 6");
        page.add(Controls.caption(Words.say("notes.editor.zone"), zone));
        page.add(Controls.caption(Words.say("notes.editor.purpose"), purpose));
        page.add(zone, "gapbottom 4");
        page.add(purpose);
        page.add(Controls.caption(Words.say("notes.editor.direction"), direction));
        page.add(Controls.caption(Words.say("notes.editor.touch"), touch));
        page.add(direction);
        page.add(touch);
        return page;
    }

    private void listen() {
        Settled.listen(zone, this::zoneChosen, this::fill);
        Settled.listen(purpose, this::purposeChosen, this::fill);
        Settled.listen(direction, this::directionChosen, this::fill);
        Settled.listen(touch, this::touchChosen, this::fill);
        purpose.getEditor().getEditorComponent().addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                purposeChosen();
            }
        });
    }

    /**
     * Shows the choices of a strip. A purpose that is being typed goes to the strip it was typed for: the selection changes
     * before the focus leaves the field.
     */
    void show(ColorNote shown) {
        Optional<ColorNote> before = note;
        Optional<String> typed = typed();
        note = Optional.of(shown);
        if (before.map(ColorNote::id).filter(shown.id()::equals).isEmpty()) {
            showChoices();
            typed.ifPresent(words -> before.ifPresent(typedFor -> session.edit(purposeOf(typedFor, words))));
        } else if (before.map(ColorNote::purpose)
                .filter(shown.purpose()::equals)
                .isEmpty()) {
            fill();
        } else {
            fillAllButTyped();
        }
    }

    /** The purpose in the field as far as it is typed; empty where it is the one taken, or one tried in the open list. */
    private Optional<String> typed() {
        String words = String.valueOf(purpose.getEditor().getItem());
        return Optional.of(words).filter(w -> !w.equals(purpose.getSelectedItem()));
    }

    /** Takes the purpose that is being typed, as far as it is. */
    void settle() {
        if (typed().isPresent()) {
            purposeChosen();
        }
    }

    /** Puts the keyboard on the first choice. */
    void begin() {
        zone.requestFocusInWindow();
    }

    private void showChoices() {
        pages.show(this, CHOICES);
        fill();
    }

    private void fill() {
        fillAllButTyped();
        note.ifPresent(shown -> purpose.getEditor().setItem(Purposes.words(shown.purpose())));
    }

    /** Fills in the strip's choices; words in the field of the purpose that are not taken yet stay. */
    private void fillAllButTyped() {
        filling = true;
        note.ifPresent(shown -> {
            int number = session.study().notes().indexOf(shown) + 1;
            title.setText(Words.say("notes.editor.title", Integer.toString(number), StickWords.stick(shown.stick())));
            fillZones(shown);
            purpose.setSelectedItem(Purposes.words(shown.purpose()));
            direction.setSelectedItem(shown.direction());
            touch.setSelectedItem(shown.touch());
        });
        filling = false;
    }

    private void fillZones(ColorNote shown) {
        List<ZoneItem> items = new ArrayList<>();
        items.add(new ZoneItem(Optional.empty(), Words.say("notes.editor.no-zone"), false));
        session.study().zones().forEach(z -> items.add(new ZoneItem(Optional.of(z.id()), z.name(), false)));
        items.add(new ZoneItem(Optional.empty(), Words.say("notes.editor.new-zone"), true));
        zone.setModel(new DefaultComboBoxModel<>(items.toArray(ZoneItem[]::new)));
        items.stream()
                .filter(item -> !item.fresh() && item.id().equals(shown.zone()))
                .findFirst()
                .ifPresent(zone::setSelectedItem);
    }

    private void zoneChosen() {
        if (filling || !(zone.getSelectedItem() instanceof ZoneItem item)) {
            return;
        }
        if (item.fresh()) {
            pages.show(this, ZONE);
            zoneForm.begin();
        } else {
            change("zone", now -> now.withZone(item.id()));
        }
    }

    private void addZone(String name, Zone.Plane plane, Zone.Distance distance) {
        Zone added = new Zone(session.study().newId("z"), name, plane, distance);
        note.ifPresent(shown -> session.edit(NoteEdits.newZone(shown, added)));
        showChoices();
        zone.requestFocusInWindow();
    }

    private void purposeChosen() {
        String typed = String.valueOf(purpose.getEditor().getItem());
        if (!filling) {
            note.ifPresent(shown -> session.edit(purposeOf(shown, typed)));
        }
    }

    private static Edit purposeOf(ColorNote note, String typed) {
        return NoteEdits.change(note, "purpose", now -> now.withPurpose(Purposes.key(typed)));
    }

    private void directionChosen() {
        if (direction.getSelectedItem() instanceof ColorNote.Direction way) {
            change("direction", now -> now.withDirection(way));
        }
    }

    private void touchChosen() {
        if (touch.getSelectedItem() instanceof ColorNote.Touch way) {
            change("touch", now -> now.withTouch(way));
        }
    }

    private void change(String choice, UnaryOperator<ColorNote> change) {
        if (!filling) {
            note.ifPresent(shown -> session.edit(NoteEdits.change(shown, choice, change)));
        }
    }
}
