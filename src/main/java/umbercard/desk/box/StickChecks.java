package umbercard.desk.box;

import java.util.ArrayList;
import java.util.List;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.theme.Controls;
import umbercard.desk.theme.Swatch;
import umbercard.model.Stick;

/** Sticks to be taken or left, one under the other, each with its reason; all are taken until the painter unmarks one. */
public final class StickChecks extends JPanel {
    private final transient Runnable changed;
    private final transient List<Line> lines = new ArrayList<>();
    private final List<JCheckBox> checks = new ArrayList<>();

    /**
     * A stick that could be taken.
     *
     * @param id tells the lines apart
     * @param title what stands first, in the words of the stick
     * @param reason a sentence
     */
    public record Line(String id, Stick stick, String title, String reason) {}

    /**
     * An empty list. The boxes of its lines are named after it and after their ids, with a dot between them.
     *
     * @param changed run when one is marked or unmarked
     */
    public StickChecks(Runnable changed) {
        super(new MigLayout("insets 0, gap 8 6, wrap 3", "[]4[][grow,fill]", ""));
        this.changed = changed;
        setOpaque(false);
    }

    /** Shows these, all of them taken, in place of what was shown. */
    public void fill(List<Line> now) {
        removeAll();
        lines.clear();
        checks.clear();
        for (Line line : now) {
            JCheckBox check = Controls.onPaper(new JCheckBox("", true));
            check.setName(getName() + "." + line.id());
            check.setOpaque(false);
            check.getAccessibleContext().setAccessibleName(line.title() + ", " + line.reason());
            check.addActionListener(event -> changed.run());
            JTextArea why = Controls.onPaper(Controls.sentence());
            why.setName(getName() + ".why");
            why.setText(line.title() + "\n" + line.reason());
            lines.add(line);
            checks.add(check);
            add(check, "w 24!, h 24!");
            add(new JLabel(new Swatch(line.stick().color(), 28)));
            add(why, "wmin 0");
        }
        revalidate();
        repaint();
    }

    /** The places, counted from 0, of those that are taken. */
    public List<Integer> taken() {
        List<Integer> taken = new ArrayList<>();
        for (int i = 0; i < checks.size(); i++) {
            if (checks.get(i).isSelected()) {
                taken.add(i);
            }
        }
        return taken;
    }

    /** The sticks that are taken, in the order of their lines. */
    public List<Stick> chosen() {
        return taken().stream().map(place -> lines.get(place).stick()).toList();
    }
}
