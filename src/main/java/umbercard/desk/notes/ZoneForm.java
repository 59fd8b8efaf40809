package umbercard.desk.notes;

import com.formdev.flatlaf.FlatClientProperties;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.theme.Controls;
import umbercard.desk.theme.WordButton;
import umbercard.model.Zone;
import umbercard.words.Words;

/** Asks for a new zone: its name, its plane, its distance. */
final class ZoneForm extends JPanel {
    private final JTextField name = Controls.onPaper(new JTextField());
    private final JComboBox<Zone.Plane> plane = Controls.choice(
            "notes.zone.plane", Zone.Plane.values(), choice -> Words.say("trade.plane." + choice.key()));
    private final JComboBox<Zone.Distance> distance = Controls.choice(
            "notes.zone.distance", Zone.Distance.values(), choice -> Words.say("trade.distance." + choice.key()));
    private final transient Given given;

    /** Takes what was asked for. */
    interface Given {
        void zone(String name, Zone.Plane plane, Zone.Distance distance);
    }

    /** Calls {@code given} with a name that is not blank, or {@code canceled}. */
    ZoneForm(Given given, Runnable canceled) {
        super(new MigLayout("insets 0 0 0 6, gap 12 2, wrap 2", "[grow,fill,sg][grow,fill,sg]"));
        this.given = given;
        setOpaque(false);
        setName("notes.zone");
        name.setName("notes.zone.name");
        name.addActionListener(event -> give());
        JLabel title = Controls.onPaper(new JLabel(Words.say("notes.zone.title")));
        WordButton add = WordButton.onPaper(
                "notes.zone.add", Words.say("notes.zone.add"), Words.say("notes.zone.add.description"), this::give);
        WordButton cancel = WordButton.onPaper(
                "notes.zone.cancel",
                Words.say("notes.zone.cancel"),
                Words.say("notes.zone.cancel.description"),
                canceled);
        add(title, "span, split 3, growx, h 26!");
        add(add, "growx 0, pad 0 6 0 6");
        add(cancel, "growx 0, pad 0 6 0 6");
        add(Controls.caption(Words.say("notes.zone.name"), name), "span");
        add(name, "span, gapbottom 4");
        add(Controls.caption(Words.say("notes.zone.plane"), plane));
        add(Controls.caption(Words.say("notes.zone.distance"), distance));
        add(plane);
        add(distance);
    }

    /** Empties the form and puts the cursor into it. */
    void begin() {
        name.setText("");
        name.putClientProperty(FlatClientProperties.OUTLINE, null);
        plane.setSelectedIndex(0);
        distance.setSelectedIndex(0);
        name.requestFocusInWindow();
    }

    private void give() {
        String words = name.getText().strip();
        if (words.isEmpty()) {
            name.putClientProperty(FlatClientProperties.OUTLINE, FlatClientProperties.OUTLINE_WARNING);
            name.requestFocusInWindow();
            return;
        }
        given.zone(words, (Zone.Plane) plane.getSelectedItem(), (Zone.Distance) distance.getSelectedItem());
    }
}
