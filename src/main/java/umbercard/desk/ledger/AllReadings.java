package umbercard.desk.ledger;

import static javax.swing.ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER;
import static javax.swing.ScrollPaneConstants.VERTICAL_SCROLLBAR_ALWAYS;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.Window;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.theme.Keys;
import umbercard.door.Finding;
import umbercard.door.Place;
import umbercard.door.Reading;
import umbercard.door.Rule;
import umbercard.kernel.Plugins;
import umbercard.readings.Wishes;
import umbercard.words.Words;

/**
 * All readings in a window of their own, which stays open beside the card: on the left each with what it finds, on the right
 * the rule of the one that is selected, whose place is shown on the card. Event thread only.
 */
final class AllReadings {
    private final Component ledger;
    private final Plugins<Reading> readings;
    private final LimitChanges changes;
    private final Consumer<List<Place>> looked;
    private Optional<Shown> shown = Optional.empty();

    /**
     * None is shown yet.
     *
     * @param ledger what it is opened from
     * @param looked told the places of the selected reading, or that there are none
     */
    AllReadings(Component ledger, Plugins<Reading> readings, LimitChanges changes, Consumer<List<Place>> looked) {
        this.ledger = ledger;
        this.readings = readings;
        this.changes = changes;
        this.looked = looked;
    }

    /** Opens the window, or brings the open one to the front. */
    void open() {
        Shown now = shown.orElseGet(Shown::new);
        shown = Optional.of(now);
        now.dialog.setVisible(true);
        now.dialog.toFront();
    }

    /** Shows what was found, by the id of the reading, and the limits in force; nothing while no window is open. */
    void show(Wishes wishes, Map<String, Finding> findings) {
        shown.ifPresent(window -> window.show(readings.on().stream()
                .map(reading -> row(reading.rule(), wishes, findings))
                .toList()));
    }

    private ReadingRow row(Rule rule, Wishes wishes, Map<String, Finding> findings) {
        boolean silenced =
                changes.isSilenced(Scope.STUDY, rule) || wishes.silenced().contains(rule.id());
        return new ReadingRow(
                rule, Optional.ofNullable(findings.get(rule.id())).filter(finding -> !silenced), silenced);
    }

    private final class Shown {
        private final JDialog dialog = new JDialog(SwingUtilities.getWindowAncestor(ledger), Words.say("ledger.all"));
        private final DefaultListModel<ReadingRow> rows = new DefaultListModel<>();
        private final JList<ReadingRow> list = new JList<>(rows);
        private final RuleForm form = new RuleForm(changes);
        private List<Place> places = List.of();

        Shown() {
            dialog.setName("all-readings");
            list.setName("all-readings.list");
            list.getAccessibleContext().setAccessibleName(Words.say("ledger.all"));
            list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
            list.setCellRenderer(new RowRenderer());
            list.setFixedCellWidth(UIScale.scale(RowRenderer.WIDTH));
            list.addListSelectionListener(event -> select());
            JButton close = new JButton(Words.say("ledger.close"));
            close.setName("all-readings.close");
            close.addActionListener(event -> close());
            JPanel all = new JPanel(
                    new MigLayout("insets 14 14 14 18, wrap 2", "[]18[grow, fill, 360::]", "[grow, fill]10[]"));
            all.add(
                    new JScrollPane(list, VERTICAL_SCROLLBAR_ALWAYS, HORIZONTAL_SCROLLBAR_NEVER),
                    "spany 2, growy, hmin 0");
            all.add(form, "wmin 0, hmin 0");
            all.add(close, "skip 0, growx 0, alignx right");
            dialog.setContentPane(all);
            Keys.bind(dialog.getRootPane(), JComponent.WHEN_IN_FOCUSED_WINDOW, "ESCAPE", "close", this::close);
            dialog.addWindowListener(new WindowAdapter() {
                @Override
                public void windowOpened(WindowEvent event) {
                    list.requestFocusInWindow();
                }

                @Override
                public void windowClosing(WindowEvent event) {
                    close();
                }
            });
            dialog.pack();
            dialog.setSize(UIScale.scale(new Dimension(820, 540)));
            dialog.setMinimumSize(UIScale.scale(new Dimension(780, 480)));
            beside(SwingUtilities.getWindowAncestor(ledger));
        }

        /** Right of the window, as far as the screen has room, so that the card stays in sight. */
        private void beside(Window window) {
            Rectangle screen = window.getGraphicsConfiguration().getBounds();
            int right = Math.min(window.getX() + window.getWidth(), screen.x + screen.width - dialog.getWidth());
            int middle = window.getY() + (window.getHeight() - dialog.getHeight()) / 2;
            dialog.setLocation(Math.max(screen.x, right), Math.max(screen.y, middle));
        }

        void show(List<ReadingRow> now) {
            if (rows.size() == now.size() && IntStream.range(0, now.size()).allMatch(i -> isSame(i, now.get(i)))) {
                IntStream.range(0, now.size())
                        .filter(i -> !rows.get(i).equals(now.get(i)))
                        .forEach(i -> rows.set(i, now.get(i)));
            } else {
                rows.clear();
                rows.addAll(now);
            }
            if (list.isSelectionEmpty() && !rows.isEmpty()) {
                list.setSelectedIndex(0);
            }
            select();
        }

        private boolean isSame(int index, ReadingRow row) {
            return rows.get(index).rule().equals(row.rule());
        }

        private void select() {
            Optional<ReadingRow> row = Optional.ofNullable(list.getSelectedValue());
            row.ifPresent(selected -> form.show(selected.rule()));
            look(row.map(ReadingRow::places).orElse(List.of()));
        }

        private void look(List<Place> now) {
            if (!now.equals(places)) {
                places = now;
                looked.accept(now);
            }
        }

        private void close() {
            look(List.of());
            shown = Optional.empty();
            dialog.dispose();
        }
    }
}
