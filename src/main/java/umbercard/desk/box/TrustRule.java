package umbercard.desk.box;

import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSlider;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.theme.Controls;
import umbercard.notes.Trust;
import umbercard.store.Preferred;
import umbercard.words.Words;

/** A rule for how far value is trusted when a stick is sought for a color; kept for every study. */
final class TrustRule extends JPanel {
    private static final int STEPS = 20;

    private final JSlider rule = Controls.onPaper(new JSlider(0, STEPS));
    private final JLabel reach = Controls.onPaper(new JLabel());

    /** @param changed run when the painter has moved it */
    TrustRule(Runnable changed) {
        super(new MigLayout("insets 0, gap 8 0", "[][grow,fill][118!]", "[]"));
        setOpaque(false);
        rule.setName("box.trust");
        rule.setOpaque(false);
        rule.setValue((int) Math.round(STEPS * Preferred.trust()));
        rule.setToolTipText(Words.say("box.trust.description"));
        rule.getAccessibleContext().setAccessibleDescription(Words.say("box.trust.description"));
        reach.setName("box.trust.reach");
        JLabel caption = Controls.onPaper(new JLabel(Words.say("box.trust")));
        caption.setLabelFor(rule);
        rule.getAccessibleContext().setAccessibleName(caption.getText());
        add(caption);
        add(rule, "wmin 40");
        add(reach);
        rule.addChangeListener(event -> {
            Preferred.keepTrust(trust().of());
            say();
            changed.run();
        });
        say();
    }

    Trust trust() {
        return new Trust((double) rule.getValue() / STEPS);
    }

    private void say() {
        double steps = trust().reach();
        reach.setText(Double.isInfinite(steps) ? Words.say("box.trust.not") : Words.say("box.trust.within", steps));
    }
}
