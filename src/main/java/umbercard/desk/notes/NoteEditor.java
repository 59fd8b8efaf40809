package umbercard.desk.notes;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.CardLayout;
import java.awt.Component;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.JTextField;
import javax.swing.SpinnerNumberModel;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.box.StickWords;
import umbercard.desk.session.Session;
import umbercard.desk.theme.Controls;
import umbercard.desk.theme.WordButton;
import umbercard.model.ColorNote;
import umbercard.model.Zone;
import umbercard.notes.Purposes;
import umbercard.words.Words;

/**
 * The choices of one strip or of several at once: zone, purpose, stroke direction, touch, layer, free words. Each change is
 * an edit of its own. Where several differ in a choice, nothing stands there.
 */
final class NoteEditor extends JPanel {
    private static final String CHOICES = "choices";
    private static final String ZONE = "zone";

    /** More layers than any paper takes. */
    private static final int MOST_LAYERS = 20;

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
    private final JSpinner layer = Controls.onPaper(new JSpinner(new SpinnerNumberModel(1, 1, MOST_LAYERS, 1)));
    private final JTextField words = Controls.onPaper(new JTextField());
    private final ZoneForm zoneForm;
    private final WordButton done;
    private transient List<ColorNote> notes = List.of();

    /** What was filled in where words can be typed, so that typing shows. */
    private String filledPurpose = "";

    private String filledWords = "";
    private boolean filling;

    NoteEditor(Session session, Runnable close) {
        this.session = session;
        setLayout(pages);
        setOpaque(false);
        setName("notes.editor");
        getAccessibleContext().setAccessibleName(Words.say("notes.editor.name"));
        purpose.setEditable(true);
        layer.setName("notes.editor.layer");
        words.setName("notes.editor.words");
        zoneForm = new ZoneForm(this::addZone, this::showChoices);
        done = WordButton.onPaper(
                "notes.editor.done", Words.say("notes.editor.done"), Words.say("notes.editor.done.description"), close);
        add(choices(), CHOICES);
        add(zoneForm, ZONE);
        listen();
    }

    private static String[] purposes() {
        List<String> said = new ArrayList<>(List.of(""));
        Purposes.KEYS.forEach(key -> said.add(Purposes.words(key)));
        return said.toArray(String[]::new);
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
        page.add(Controls.caption(Words.say("notes.editor.touch"), touch), "split 2, growx");
        page.add(Controls.caption(Words.say("notes.editor.layer"), layer), "w 64!, growx 0");
        page.add(direction, "gapbottom 4");
        page.add(touch, "split 2, growx");
        page.add(layer, "w 64!, growx 0");
        page.add(Controls.caption(Words.say("notes.editor.words"), words), "span, split 2, growx 0");
        page.add(words, "growx");
        return page;
    }

    private void listen() {
        Settled.listen(zone, this::zoneChosen, this::fill);
        Settled.listen(purpose, this::purposeChosen, this::fill);
        Settled.listen(direction, this::directionChosen, this::fill);
        Settled.listen(touch, this::touchChosen, this::fill);
        layer.addChangeListener(event -> layerChosen());
        words.addActionListener(event -> wordsGiven());
        onLeaving(words, this::wordsGiven);
        onLeaving(purpose.getEditor().getEditorComponent(), this::purposeLeft);
    }

    private static void onLeaving(Component field, Runnable action) {
        field.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                action.run();
            }
        });
    }

    /**
     * Shows the choices of strips, at least one. Words that are being typed go to the strips they were typed for: the selection
     * changes before the focus leaves the field.
     */
    void show(List<ColorNote> shown) {
        List<ColorNote> before = notes;
        boolean others = !ids(before).equals(ids(shown));
        Optional<String> typedPurpose = typedPurpose();
        Optional<String> typedWords = typedWords();
        notes = shown.stream()
                .flatMap(note ->
                        session.study().notes().stream().filter(now -> now.id().equals(note.id())))
                .toList();
        if (others) {
            showChoices();
            typedPurpose.ifPresent(typed -> give(before, "purpose", purposeOf(typed)));
            typedWords.ifPresent(typed -> give(before, "words", now -> now.withWords(typed)));
        } else {
            fillBut(
                    same(before, ColorNote::purpose).equals(same(notes, ColorNote::purpose)),
                    same(before, ColorNote::words).equals(same(notes, ColorNote::words)));
        }
    }

    private static List<String> ids(List<ColorNote> notes) {
        return notes.stream().map(ColorNote::id).toList();
    }

    /** What all of them have in common; empty where they differ. */
    private static <T> Optional<T> same(List<ColorNote> notes, Function<ColorNote, T> choice) {
        List<T> different = notes.stream().map(choice).distinct().toList();
        return different.size() == 1 ? Optional.of(different.get(0)) : Optional.empty();
    }

    /** The purpose in the field as far as it is typed; empty where it is the one taken, or one tried in the open list. */
    private Optional<String> typedPurpose() {
        Object item = purpose.getEditor().getItem();
        String typed = item == null ? "" : String.valueOf(item);
        return Optional.of(typed).filter(t -> !t.equals(purpose.getSelectedItem()) && !t.equals(filledPurpose));
    }

    private Optional<String> typedWords() {
        return Optional.of(words.getText().strip()).filter(typed -> !typed.equals(filledWords));
    }

    /** Takes what is being typed, as far as it is. */
    void settle() {
        purposeLeft();
        wordsGiven();
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
        fillBut(false, false);
    }

    /** Fills in the strips' choices; what is typed and not taken yet stays where that is asked for. */
    private void fillBut(boolean typedPurposeStays, boolean typedWordsStay) {
        filling = true;
        title.setText(heading());
        fillZones();
        filledPurpose = same(notes, ColorNote::purpose).map(Purposes::words).orElse("");
        Object typed = purpose.getEditor().getItem();
        purpose.setSelectedItem(filledPurpose);
        purpose.getEditor().setItem(typedPurposeStays ? typed : filledPurpose);
        choose(direction, same(notes, ColorNote::direction));
        choose(touch, same(notes, ColorNote::touch));
        same(notes, ColorNote::layer).ifPresent(layer::setValue);
        filledWords = same(notes, ColorNote::words).orElse("");
        if (!typedWordsStay) {
            words.setText(filledWords);
        }
        filling = false;
    }

    private static <T> void choose(JComboBox<T> combo, Optional<T> choice) {
        choice.ifPresentOrElse(combo::setSelectedItem, () -> combo.setSelectedIndex(-1));
    }

    private String heading() {
        if (notes.size() != 1) {
            return Words.say("notes.editor.several", Integer.toString(notes.size()));
        }
        ColorNote only = notes.get(0);
        int number = session.study().notes().indexOf(only) + 1;
        return Words.say("notes.editor.title", Integer.toString(number), StickWords.stick(only.stick()));
    }

    private void fillZones() {
        List<ZoneItem> items = new ArrayList<>();
        items.add(new ZoneItem(Optional.empty(), Words.say("notes.editor.no-zone"), false));
        session.study().zones().forEach(z -> items.add(new ZoneItem(Optional.of(z.id()), z.name(), false)));
        items.add(new ZoneItem(Optional.empty(), Words.say("notes.editor.new-zone"), true));
        zone.setModel(new DefaultComboBoxModel<>(items.toArray(ZoneItem[]::new)));
        Optional<Optional<String>> all = same(notes, ColorNote::zone);
        choose(
                zone,
                items.stream()
                        .filter(item -> !item.fresh() && all.equals(Optional.of(item.id())))
                        .findFirst());
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
        session.edit(NoteEdits.newZone(notes, added));
        showChoices();
        zone.requestFocusInWindow();
    }

    private void purposeChosen() {
        if (purpose.getEditor().getItem() instanceof String given
                && (!given.isEmpty() || same(notes, ColorNote::purpose).isPresent())) {
            purposeGiven(given);
        }
    }

    private void purposeLeft() {
        typedPurpose().ifPresent(this::purposeGiven);
    }

    private void purposeGiven(String given) {
        change("purpose", purposeOf(given));
    }

    private static UnaryOperator<ColorNote> purposeOf(String given) {
        return now -> now.withPurpose(Purposes.key(given));
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

    private void layerChosen() {
        if (layer.getValue() instanceof Integer number) {
            change("layer", now -> now.withLayer(number));
        }
    }

    private void wordsGiven() {
        typedWords().ifPresent(given -> change("words", now -> now.withWords(given)));
    }

    private void change(String choice, UnaryOperator<ColorNote> change) {
        if (!filling) {
            give(notes, choice, change);
        }
    }

    private void give(List<ColorNote> strips, String choice, UnaryOperator<ColorNote> change) {
        if (!strips.isEmpty()) {
            session.edit(NoteEdits.change(strips, choice, change));
        }
    }
}
