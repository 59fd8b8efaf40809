package umbercard.desk.photographed;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.SpinnerNumberModel;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.theme.Controls;
import umbercard.geometry.Point;
import umbercard.model.Box;
import umbercard.photo.Gray;
import umbercard.photo.Tray;
import umbercard.photo.TraySampling;
import umbercard.photo.TraySampling.Cell;
import umbercard.picture.Picture;
import umbercard.words.Words;

/**
 * Takes a box from a photograph of its open tray: the painter marks the tray's corners, says how many rows and columns it has,
 * and presses what is white beside it; the colors found are shown at once. Event thread only.
 */
public final class TrayPanel extends JPanel {
    private static final int MOST_CELLS = 40;

    private final transient Picture picture;
    private final MarkedPhotograph photograph;
    private final JSpinner rows = number("rows", new SpinnerNumberModel(6, 1, MOST_CELLS, 1));
    private final JSpinner columns = number("columns", new SpinnerNumberModel(6, 1, MOST_CELLS, 1));
    private final JSpinner value = number("value", new SpinnerNumberModel(Gray.PAPER, 1, 10, 0.25));
    private final JTextField name = new JTextField();
    private final CellsView cells = new CellsView();
    private final JTextArea told = Controls.sentence();
    private final JButton take = new JButton(Words.say("photographed.tray.take"));
    private final transient Asked<TrayMarks, List<Cell>> asked;

    /**
     * The panel.
     *
     * @param photo what to call the photograph where something is wrong
     * @param called what to call the box if the painter does not say
     * @param taken told the box when the painter takes it
     * @param left run when the painter leaves it
     */
    public TrayPanel(String photo, Picture picture, String called, Consumer<Box> taken, Runnable left) {
        super(new MigLayout("insets 16, gap 20 0, fill", "[grow,fill]20[264!,fill]", "[grow,fill]"));
        this.picture = picture;
        setName("photographed.tray");
        told.setName("photographed.told");
        photograph = new MarkedPhotograph(picture, true, this::changed);
        asked = new Asked<>(
                "umbercard-tray",
                marks -> TraySampling.cells(photo, picture, marks.tray().orElseThrow()),
                this::show,
                wrong -> {
                    cells.show(List.of(), 1);
                    tell(Words.say(wrong), false);
                });
        name.setName("photographed.name");
        name.setText(called);
        take.setName("photographed.take");
        take.addActionListener(event -> taken.accept(TraySampling.box(
                name.getText().isBlank() ? called : name.getText().strip(), cells.cells())));
        JButton leave = new JButton(Words.say("photographed.leave"));
        leave.setName("photographed.leave");
        leave.addActionListener(event -> left.run());
        add(photograph, "wmin 300, hmin 240");
        add(side(leave));
        photograph.draw(seen -> marks().lines());
        List.of(rows, columns, value).forEach(spinner -> spinner.addChangeListener(event -> changed()));
        changed();
    }

    private static JSpinner number(String key, SpinnerNumberModel model) {
        JSpinner spinner = new JSpinner(model);
        spinner.setName("photographed." + key);
        return spinner;
    }

    private JPanel side(JButton leave) {
        JPanel side = new JPanel(new MigLayout("insets 0, gap 8 6, wrap 2", "[grow,fill][grow,fill]", ""));
        side.setOpaque(false);
        JTextArea how = Controls.sentence();
        how.setName("photographed.how");
        how.setText(Words.say("photographed.tray.how"));
        side.add(how, "span, wmin 0, gapbottom 4");
        put(side, "rows", rows);
        put(side, "columns", columns);
        put(side, "value", value);
        JButton white = new JButton(Words.say("photographed.tray.white"));
        white.setName("photographed.add-white");
        white.setToolTipText(Words.say("photographed.tray.white.description"));
        white.addActionListener(event -> photograph.markInTheMiddle());
        side.add(white, "aligny bottom");
        side.add(photograph.magnified(), "span, split 2, growx 0, w 120!, h 120!, gaptop 4");
        side.add(cells, "w 132!, h 120!");
        side.add(Controls.scroller(told, false), "span, wmin 0, grow, pushy, hmin 0");
        JLabel caption = new JLabel(Words.say("photographed.tray.name"));
        caption.setLabelFor(name);
        side.add(caption, "span, gaptop 4");
        side.add(name, "span");
        side.add(leave, "gaptop 8");
        side.add(take, "gaptop 8");
        return side;
    }

    private static void put(JPanel side, String key, JComponent field) {
        JPanel cell = new JPanel(new MigLayout("insets 0, gap 0 2, wrap 1", "[grow,fill]"));
        cell.setOpaque(false);
        JLabel caption = new JLabel(Words.say("photographed.tray." + key));
        caption.setLabelFor(field);
        field.getAccessibleContext().setAccessibleName(caption.getText());
        field.setToolTipText(Words.say("photographed.tray." + key + ".description"));
        cell.add(caption);
        cell.add(field);
        side.add(cell);
    }

    private static int number(JSpinner spinner) {
        return ((Number) spinner.getValue()).intValue();
    }

    private TrayMarks marks() {
        return new TrayMarks(
                photograph.corners(),
                number(rows),
                number(columns),
                photograph.whites(),
                ((Number) value.getValue()).doubleValue(),
                picture);
    }

    private void changed() {
        photograph.repaint();
        take.setEnabled(false);
        TrayMarks marks = marks();
        Optional<Tray> tray = marks.tray();
        if (tray.isEmpty()) {
            asked.drop();
            cells.show(List.of(), 1);
            tell(Words.say("photographed.tray.no-white"), false);
        } else {
            asked.ask(marks);
        }
    }

    private void show(TrayMarks marks, List<Cell> found) {
        cells.show(found, marks.columns());
        String remarks = TraySampling.remarks(found).stream().map(Words::say).collect(Collectors.joining("\n"));
        int sticks = TraySampling.sticks(found).size();
        tell(Words.say("photographed.tray.found", sticks) + (remarks.isEmpty() ? "" : "\n" + remarks), sticks > 0);
    }

    private void tell(String words, boolean some) {
        told.setText(words);
        take.setEnabled(some);
    }

    /** Where the keyboard begins. */
    public JComponent first() {
        return rows;
    }

    /** Puts the tray's corners there, in pixels of the picture. */
    void corners(List<Point> places) {
        photograph.corners(places);
    }
}
