package umbercard.desk.box;

import com.formdev.flatlaf.FlatClientProperties;
import java.util.List;
import java.util.stream.Collectors;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.theme.Controls;
import umbercard.model.Stick;
import umbercard.notes.Gap;
import umbercard.notes.Gaps;
import umbercard.words.Words;

/** The sticks set out: how many, by value, by hue, and what is missing among them. */
final class SetOutView extends JPanel {
    private final JLabel title = Controls.onPaper(new JLabel());
    private final JLabel lacks = Controls.onPaper(new JLabel());
    private final ValueStrip strip = new ValueStrip();
    private final HueRing ring = new HueRing();

    SetOutView() {
        super(new MigLayout("insets 0, gap 8 2, hidemode 3", "[grow,fill][]", "[][grow,fill][]"));
        setOpaque(false);
        setName("box.set-out-view");
        title.setName("box.set-out.title");
        title.putClientProperty(FlatClientProperties.STYLE, "font: $semibold.font");
        lacks.setName("box.set-out.lacks");
        add(title, "cell 0 0");
        add(strip, "cell 0 1, wmin 160, hmin pref");
        add(ring, "cell 1 0 1 2, hmin pref");
        add(lacks, "cell 0 2 2 1, wmin 0");
    }

    /** @param needed the Munsell values that the study needs; empty if that is not known */
    void show(List<Stick> sticks, List<Double> needed) {
        List<Gap> gaps = Gaps.of(sticks, needed);
        title.setText(Words.say("box.set-out.title", sticks.size()));
        strip.show(sticks, gaps);
        ring.show(sticks);
        String said = gaps.stream().map(gap -> Words.say(gap.said())).collect(Collectors.joining("; "));
        lacks.setText(said.isEmpty() ? " " : Words.say("box.set-out.lacks", said));
        lacks.setToolTipText(said.isEmpty() ? null : lacks.getText());
    }
}
