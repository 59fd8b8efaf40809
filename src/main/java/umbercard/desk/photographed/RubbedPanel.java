package umbercard.desk.photographed;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import umbercard.color.MunsellValue;
import umbercard.desk.theme.Controls;
import umbercard.desk.theme.Swatch;
import umbercard.geometry.Perspective;
import umbercard.geometry.Point;
import umbercard.geometry.Size;
import umbercard.photo.CardMarks;
import umbercard.picture.Picture;
import umbercard.rubbed.Learned;
import umbercard.rubbed.RubbedNotes;
import umbercard.words.Words;

/**
 * Learns the true colors of sticks from a photograph of the printed color card on which they were rubbed: the painter marks the
 * card's corners, sees what would change, and keeps it stick by stick. Event thread only.
 */
public final class RubbedPanel extends JPanel {
    private final transient List<RubbedNotes> cards;
    private final MarkedPhotograph photograph;
    private final JComboBox<Integer> which;
    private final JPanel sticks = new JPanel(new MigLayout("insets 0, gap 4 4, wrap 4", "[]6[]2[]8[grow,fill]", ""));
    private final JTextArea told = Controls.sentence();
    private final JButton keep = new JButton(Words.say("photographed.rubbed.keep"));
    private final transient List<Kept> kept = new ArrayList<>();

    /** The ids of sticks that the painter leaves as they are. */
    private final transient Set<String> left = new HashSet<>();

    private final transient Asked<Marked, Learned> asked;

    private record Marked(int card, List<Point> corners) {}

    private record Kept(Learned.OfStick stick, JCheckBox box) {}

    /**
     * The panel.
     *
     * @param photo what to call the photograph where something is wrong
     * @param cards the color cards as they were printed, one or more
     * @param learned told the sticks whose colors the painter keeps
     * @param leaving run when the painter leaves it
     */
    public RubbedPanel(
            String photo,
            Picture picture,
            List<RubbedNotes> cards,
            Consumer<List<Learned.OfStick>> learned,
            Runnable leaving) {
        super(new MigLayout("insets 16, gap 20 0, fill", "[grow,fill]20[300!,fill]", "[grow,fill]"));
        this.cards = List.copyOf(cards);
        setName("photographed.rubbed");
        told.setName("photographed.told");
        Integer[] numbers = IntStream.range(0, cards.size()).boxed().toArray(Integer[]::new);
        which = new JComboBox<>(numbers);
        which.setName("photographed.card");
        which.setRenderer(Controls.said(number -> Words.say("photographed.rubbed.card", number + 1, cards.size())));
        which.getAccessibleContext().setAccessibleName(Words.say("photographed.rubbed.which"));
        photograph = new MarkedPhotograph(picture, false, this::changed);
        asked = new Asked<>(
                "umbercard-rubbed",
                marked -> cards.get(marked.card()).read(photo, picture, marked.corners()),
                (marked, found) -> show(found),
                wrong -> {
                    fill(List.of());
                    told.setText(Words.say(wrong));
                });
        keep.setName("photographed.take");
        keep.addActionListener(event -> learned.accept(chosen().toList()));
        JButton leave = new JButton(Words.say("photographed.leave"));
        leave.setName("photographed.leave");
        leave.addActionListener(event -> leaving.run());
        add(photograph, "wmin 300, hmin 240");
        add(side(leave));
        photograph.draw(this::lines);
        which.addActionListener(event -> changed());
        told.setText(Words.say("photographed.rubbed.begin"));
        keep.setEnabled(false);
    }

    private JPanel side(JButton leave) {
        JPanel side = new JPanel(new MigLayout("insets 0, gap 8 6, wrap 2, hidemode 3", "[grow,fill][grow,fill]", ""));
        side.setOpaque(false);
        JTextArea how = Controls.sentence();
        how.setName("photographed.how");
        how.setText(Words.say("photographed.rubbed.how"));
        which.setVisible(cards.size() > 1);
        sticks.setOpaque(false);
        side.add(how, "span, wmin 0");
        side.add(which, "span");
        side.add(photograph.magnified(), "span, growx 0, w 120!, h 120!, gaptop 4");
        side.add(told, "span, wmin 0");
        side.add(Controls.scroller(sticks, false), "span, grow, pushy, wmin 0, hmin 0");
        side.add(leave, "gaptop 8");
        side.add(keep, "gaptop 8");
        return side;
    }

    private int card() {
        return Math.max(0, which.getSelectedIndex());
    }

    private void changed() {
        photograph.repaint();
        fill(List.of());
        told.setText(Words.say("photographed.wait"));
        asked.ask(new Marked(card(), photograph.corners()));
    }

    /** The card's border and its patches, as they are seen. */
    private List<List<Point>> lines(List<Point> corners) {
        CardMarks marks = cards.get(card()).marks(corners);
        return Perspective.of(marks.card(), corners)
                .map(view -> Stream.concat(
                                Stream.of(rectangle(view, new Point(0, 0), marks.card())),
                                marks.patches().stream().map(patch -> rectangle(view, patch.corner(), patch.size())))
                        .toList())
                .orElse(List.of());
    }

    private static List<Point> rectangle(Perspective view, Point corner, Size size) {
        return Stream.of(
                        corner,
                        corner.plus(size.width(), 0),
                        corner.plus(size.width(), size.height()),
                        corner.plus(0, size.height()),
                        corner)
                .map(view::seen)
                .toList();
    }

    private void show(Learned found) {
        told.setText(Words.say("photographed.rubbed.found", found.told().size()));
        fill(found.sticks());
    }

    private void fill(List<Learned.OfStick> found) {
        sticks.removeAll();
        kept.clear();
        for (Learned.OfStick stick : found) {
            String words = stick.isTold()
                    ? Words.say(
                            "photographed.rubbed.value",
                            stick.stick().title(),
                            MunsellValue.of(stick.stick().color()),
                            MunsellValue.of(stick.color()))
                    : Words.say(
                            "photographed.rubbed." + stick.look().key(),
                            stick.stick().title());
            JCheckBox box = new JCheckBox(
                    "", stick.isTold() && !left.contains(stick.stick().id()));
            box.setName("photographed.stick." + stick.stick().id());
            box.setEnabled(stick.isTold());
            box.getAccessibleContext().setAccessibleName(words);
            box.addActionListener(event -> leave(stick.stick().id(), !box.isSelected()));
            kept.add(new Kept(stick, box));
            JLabel label = new JLabel(words);
            label.setToolTipText(words);
            sticks.add(box, "w 24!, h 24!");
            sticks.add(new JLabel(new Swatch(stick.stick().color(), 22)));
            sticks.add(new JLabel(new Swatch(stick.color(), 22)));
            sticks.add(label, "wmin 0");
        }
        allow();
        sticks.revalidate();
        sticks.repaint();
    }

    private Stream<Learned.OfStick> chosen() {
        return kept.stream().filter(one -> one.box().isSelected()).map(Kept::stick);
    }

    private void leave(String id, boolean out) {
        if (out) {
            left.add(id);
        } else {
            left.remove(id);
        }
        allow();
    }

    private void allow() {
        keep.setEnabled(chosen().findAny().isPresent());
    }

    /** Where the keyboard begins. */
    public JComponent first() {
        return photograph.first();
    }

    /** Puts the card's corners there, in pixels of the picture. */
    void corners(List<Point> places) {
        photograph.corners(places);
    }
}
