package umbercard.desk.box;

import com.formdev.flatlaf.FlatClientProperties;
import java.util.List;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.theme.Controls;
import umbercard.model.Stick;
import umbercard.words.Words;

/** The sticks set out: how many, by value, by hue, and what is missing among them. */
final class SetOutView extends JPanel {
    private final JLabel title = Controls.onPaper(new JLabel());
    private final ValueStrip strip = new ValueStrip();
    private final HueRing ring = new HueRing();

    SetOutView() {
        super(new MigLayout("insets 0, gap 8 2, hidemode 3", "[grow,fill][]", "[][grow,fill]"));
        setOpaque(false);
        setName("box.set-out");
        title.setName("box.set-out.title");
        title.putClientProperty(FlatClientProperties.STYLE, "font: $semibold.font");
        add(title, "cell 0 0");
        add(strip, "cell 0 1, wmin 160, hmin pref");
        add(ring, "cell 1 0 1 2, hmin pref");
    }

    void show(List<Stick> sticks) {
        title.setText(Words.say("box.set-out.title", sticks.size()));
        strip.show(sticks);
        ring.show(sticks);
    }
}
