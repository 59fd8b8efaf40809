package umbercard.desk;

import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.theme.WordButton;
import umbercard.desk.work.Background;
import umbercard.desk.work.Task;
import umbercard.words.Words;

/** The work under way, how far it is, and a word to stop it; out of sight when there is none. */
final class WorkStrip extends JPanel implements Background.Watch {
    private static final int STEPS = 1000;

    private final JLabel name = new JLabel();
    private final JProgressBar bar = new JProgressBar(0, STEPS);
    private Runnable stopping = () -> {};

    WorkStrip() {
        super(new MigLayout("insets 0, gapx 10, hidemode 3", "[shrinkprio 200][60:140:140][]", "[]"));
        setName("work");
        setOpaque(false);
        bar.setName("work-progress");
        add(name, "wmin 0");
        add(bar, "growx");
        add(WordButton.onDesk(
                "work-stop", Words.say("desk.work.stop"), Words.say("desk.work.stop.tip"), () -> stopping.run()));
        setVisible(false);
    }

    @Override
    public void started(Task task) {
        name.setText(Words.say(task.name()));
        stopping = task::stop;
        progressed(task);
        setVisible(true);
    }

    @Override
    public void progressed(Task task) {
        bar.setIndeterminate(task.share() < 0);
        bar.setValue((int) Math.round(STEPS * Math.max(0, task.share())));
    }

    @Override
    public void ended(Task task) {
        stopping = () -> {};
        setVisible(false);
    }
}
