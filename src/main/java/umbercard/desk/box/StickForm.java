package umbercard.desk.box;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Color;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import umbercard.color.Lab;
import umbercard.desk.theme.Controls;
import umbercard.desk.theme.Keys;
import umbercard.desk.theme.WordButton;
import umbercard.model.Stick;
import umbercard.model.Stick.Hardness;
import umbercard.model.Stick.Slot;
import umbercard.words.Words;

/** Asks what a stick is: its name, its place in the tray, its color, how hard it is, whether it is at hand, a note. */
final class StickForm extends JPanel {
    private final JLabel title = Controls.onPaper(new JLabel());
    private final JTextField name = field("name");
    private final JTextField place = field("place");
    private final JTextField color = field("color");
    private final JPanel sample = new JPanel();
    private final JLabel told = new JLabel(" ");
    private final JComboBox<Optional<Hardness>> hardness;
    private final JComboBox<Stick.State> state =
            Controls.choice("box.form.state", Stick.State.values(), choice -> Words.say("box.state." + choice.key()));
    private final JTextField note = field("note");
    private final WordButton remove;
    private final transient Consumer<Stick> kept;
    private final transient Consumer<Stick> removed;
    private final transient Runnable canceled;
    private Optional<Stick> before = Optional.empty();
    private String id = "";

    StickForm(Consumer<Stick> kept, Consumer<Stick> removed, Runnable canceled) {
        super(new MigLayout("insets 0, gap 12 2, wrap 2", "[grow,fill,sg][grow,fill,sg]"));
        this.kept = kept;
        this.removed = removed;
        this.canceled = canceled;
        setOpaque(false);
        setName("box.form");
        hardness = Controls.choice("box.form.hardness", hardnesses(), StickForm::hardnessWords);
        remove = word("remove", () -> before.ifPresent(this.removed));
        told.putClientProperty(FlatClientProperties.STYLE_CLASS, "paperSoft");
        told.setName("box.form.told");
        title.putClientProperty(FlatClientProperties.STYLE, "font: $semibold.font");
        sample.setName("box.form.sample");
        sample.setPreferredSize(new Dimension(36, 1));
        lay();
        Controls.onTyping(color, this::showColor);
        Keys.bind(this, WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, "ESCAPE", "cancel", canceled);
    }

    private JTextField field(String key) {
        JTextField field = Controls.onPaper(new JTextField());
        field.setName("box.form." + key);
        field.addActionListener(event -> keep());
        return field;
    }

    private static WordButton word(String key, Runnable action) {
        return WordButton.onPaper(
                "box.form." + key, Words.say("box.form." + key), Words.say("box.form." + key + ".description"), action);
    }

    @SuppressWarnings({"unchecked", "rawtypes"}) // an array of a generic type can be had no other way
    private static Optional<Hardness>[] hardnesses() {
        List<Optional<Hardness>> all = new ArrayList<>(List.of(Optional.empty()));
        Arrays.stream(Hardness.values()).map(Optional::of).forEach(all::add);
        return all.toArray(Optional[]::new);
    }

    private static String hardnessWords(Optional<Hardness> hardness) {
        return Words.say("box.hardness." + hardness.map(Hardness::key).orElse("not-known"));
    }

    private void lay() {
        add(title, "span, h 28!");
        put("name", name, "span");
        put("place", place, "");
        put("hardness", hardness, "");
        JPanel both = new JPanel(new MigLayout("insets 0, gap 8", "[grow,fill][]", "[fill]"));
        both.setOpaque(false);
        both.add(color);
        both.add(sample, "w 36!");
        add(Controls.caption(Words.say("box.form.color"), color), "span");
        add(both, "span, gapbottom 4");
        put("state", state, "");
        put("note", note, "");
        add(told, "span, h 22!, wmin 0");
        JPanel words = new JPanel(new MigLayout("insets 0, gap 8, hidemode 3", "[][][grow,right]"));
        words.setOpaque(false);
        words.add(word("keep", this::keep));
        words.add(word("cancel", canceled));
        words.add(remove);
        add(words, "span, gaptop 6");
    }

    /** A field under its caption, in a cell of its own. */
    private void put(String key, JComponent field, String where) {
        JPanel cell = new JPanel(new MigLayout("insets 0 0 4 0, gap 0 2, wrap 1", "[grow,fill]"));
        cell.setOpaque(false);
        cell.add(Controls.caption(Words.say("box.form." + key), field));
        cell.add(field);
        add(cell, where);
    }

    /** Shows a stick to be put right. */
    void change(Stick stick) {
        before = Optional.of(stick);
        id = stick.id();
        title.setText(Words.say("box.form.title.change", StickWords.stick(stick)));
        name.setText(stick.name().orElse(""));
        place.setText(stick.slot().map(Slot::label).orElse(""));
        hardness.setSelectedItem(stick.hardness());
        state.setSelectedItem(stick.state());
        note.setText(stick.note());
        color.setText(ColorText.write(stick.color()));
        begin(true);
    }

    /** Asks for a new stick that will have that id. */
    void add(String freeId) {
        before = Optional.empty();
        id = freeId;
        title.setText(Words.say("box.form.title.add"));
        List.of(name, place, note, color).forEach(field -> field.setText(""));
        hardness.setSelectedIndex(0);
        state.setSelectedItem(Stick.State.OWNED);
        begin(false);
    }

    private void begin(boolean known) {
        remove.setVisible(known);
        List.of(name, place, color).forEach(field -> outline(field, false));
        showColor();
        told.setText(" ");
        name.requestFocusInWindow();
        name.selectAll();
    }

    /** The color field's words, unless they are still those of the stick, which may have more places. */
    private Optional<Lab> color() {
        return before.map(Stick::color)
                .filter(known -> ColorText.write(known).equals(color.getText().strip()))
                .or(() -> ColorText.read(color.getText()));
    }

    private void showColor() {
        Optional<Lab> typed = color();
        sample.setOpaque(typed.isPresent());
        typed.ifPresent(lab -> sample.setBackground(new Color(lab.srgb())));
        sample.repaint();
        if (typed.isPresent()) {
            outline(color, false);
        }
    }

    private void keep() {
        Optional<Lab> lab = color();
        Optional<Slot> slot = slot();
        boolean placeRead = slot.isPresent() || place.getText().isBlank();
        String words = name.getText().strip();
        outline(color, lab.isEmpty());
        outline(place, !placeRead);
        boolean called = !words.isEmpty() || slot.isPresent();
        outline(name, !called && placeRead);
        if (lab.isEmpty() || !placeRead || !called) {
            told.setText(Words.say(
                    lab.isEmpty() ? "box.form.no-color" : !placeRead ? "box.form.no-place" : "box.form.no-name"));
            (lab.isEmpty() ? color : placeRead ? name : place).requestFocusInWindow();
            return;
        }
        kept.accept(new Stick(
                id,
                Optional.of(words).filter(w -> !w.isEmpty()),
                slot,
                lab.get(),
                chosen(),
                state.getItemAt(state.getSelectedIndex()),
                note.getText().strip(),
                before.map(Stick::more).orElse(Map.of())));
    }

    private Optional<Hardness> chosen() {
        return hardness.getItemAt(hardness.getSelectedIndex());
    }

    private Optional<Slot> slot() {
        return Slot.read(place.getText());
    }

    private static void outline(JTextField field, boolean wrong) {
        field.putClientProperty(FlatClientProperties.OUTLINE, wrong ? FlatClientProperties.OUTLINE_WARNING : null);
    }
}
