package umbercard.desk.trial;

import com.formdev.flatlaf.FlatClientProperties;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Window;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.ButtonGroup;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JToggleButton;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.session.Session;
import umbercard.desk.theme.Controls;
import umbercard.desk.theme.Keys;
import umbercard.desk.theme.PaperCard;
import umbercard.desk.theme.Swatch;
import umbercard.desk.theme.WordButton;
import umbercard.kernel.Latest;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.notes.layers.ExpectedZone;
import umbercard.notes.layers.Trial;
import umbercard.picture.Picture;
import umbercard.words.Words;

/**
 * The trial: the thumbnail painted with the notes, in color and in gray, beside the squinted reference, after the sitting that
 * the painter chooses; and what each zone comes to against what it should be. Event thread only.
 */
public final class TrialDialog {
    private static final Dimension ROOM = new Dimension(1130, 590);

    private final TrialView color;
    private final TrialView gray;
    private final SquintedView seenColor;
    private final SquintedView seenGray;
    private final JPanel zones = new JPanel(new MigLayout("insets 0, gap 10 8, wrap 2", "[][grow,fill]", ""));
    private final JTextArea told = Controls.onPaper(Controls.sentence());
    private final JPanel stages = new JPanel(new MigLayout("insets 0, gap 4"));
    private Optional<Tried> tried = Optional.empty();
    private int stage;

    private record Question(Study study, Thumbnail thumbnail, Optional<Picture> photograph) {}

    private TrialDialog(Study study) {
        double ratio = study.ratio();
        color = new TrialView(ratio, false, Words.say("trial.color"));
        gray = new TrialView(ratio, true, Words.say("trial.gray"));
        seenColor = new SquintedView(ratio, Words.say("trial.squinted"));
        seenGray = new SquintedView(ratio, Words.say("trial.squinted-gray"));
        stage = Trial.sittings(study);
        zones.setOpaque(false);
        zones.setName("trial.zones");
        told.setName("trial.told");
        told.setText(Words.say("trial.wait"));
        stages.setOpaque(false);
        ButtonGroup group = new ButtonGroup();
        for (int sitting = 0; sitting <= stage; sitting++) {
            stages.add(word(sitting, group));
        }
    }

    /**
     * Shows the trial of a thumbnail of the session's study until the painter closes it.
     *
     * @param desk over whose window it opens
     */
    public static void open(Component desk, Session session, Thumbnail thumbnail) {
        Study study = session.study();
        TrialDialog trial = new TrialDialog(study);
        Latest<Question, Tried> worker = new Latest<>(
                "umbercard-trial",
                (question, stopped) -> Tried.of(question.study(), question.thumbnail(), question.photograph()),
                trial::show,
                SwingUtilities::invokeLater);
        worker.ask(new Question(study, thumbnail, session.photograph()));
        JDialog dialog = trial.dialog(SwingUtilities.getWindowAncestor(desk));
        dialog.setVisible(true);
        dialog.dispose();
    }

    private JToggleButton word(int sitting, ButtonGroup group) {
        boolean all = sitting == stage;
        String words = sitting == 0
                ? Words.say("trial.underpainting")
                : all ? Words.say("trial.all") : Words.say("trial.sitting", Integer.toString(sitting));
        JToggleButton word = new JToggleButton(words, all);
        word.setName("trial.stage." + sitting);
        word.putClientProperty(FlatClientProperties.STYLE_CLASS, "word");
        word.putClientProperty(FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_BORDERLESS);
        word.addActionListener(event -> {
            stage = sitting;
            paint();
        });
        group.add(word);
        return word;
    }

    private void show(Tried found) {
        tried = Optional.of(found);
        found.squinted().ifPresent(squinted -> {
            seenColor.show(squinted.color());
            seenGray.show(squinted.gray());
        });
        told.setText(Words.say(found.zones().isEmpty() ? "trial.nothing" : "trial.guide"));
        found.zones().forEach(this::tell);
        zones.revalidate();
        paint();
    }

    private void tell(ExpectedZone zone) {
        JTextArea words = Controls.onPaper(Controls.sentence());
        words.setName("trial.zone");
        String coats =
                zone.coats().stream().map(coat -> Words.say(coat.words())).collect(Collectors.joining("\n"));
        words.setText(Words.say(zone.words()) + "\n" + coats);
        zones.add(new JLabel(new Swatch(zone.color(), 24)), "aligny top");
        zones.add(words, "wmin 0");
    }

    private void paint() {
        tried.ifPresent(found -> {
            Trial shown = found.trials().get(stage);
            color.show(shown.areas());
            gray.show(shown.areas());
        });
    }

    private JDialog dialog(Window window) {
        JDialog dialog = new JDialog(window, Words.say("trial.title"), JDialog.ModalityType.APPLICATION_MODAL);
        dialog.setName("trial");
        JPanel content = new JPanel(
                new MigLayout("insets 12 16 14 16, fill", "[grow 100, fill, 0::]16[300!, fill]", "[]8[grow, fill]"));
        content.add(stages, "growx 0");
        WordButton close = WordButton.onDesk(
                "trial.close", Words.say("trial.close"), Words.say("trial.close"), () -> dialog.setVisible(false));
        content.add(close, "growx 0, alignx right, wrap");
        content.add(pictures(), "grow, hmin 0");
        content.add(card(), "grow, hmin 0");
        Keys.bind(
                dialog.getRootPane(),
                JComponent.WHEN_IN_FOCUSED_WINDOW,
                "ESCAPE",
                "close",
                () -> dialog.setVisible(false));
        dialog.setContentPane(content);
        dialog.setSize(
                Math.min(window.getWidth(), UIScale.scale(ROOM.width)),
                Math.min(window.getHeight(), UIScale.scale(ROOM.height)));
        dialog.setLocationRelativeTo(window);
        return dialog;
    }

    /** The trial over the reference, color beside gray. */
    private JPanel pictures() {
        JPanel pictures = new JPanel(new MigLayout(
                "insets 0, fill",
                "[grow, fill, 0::, sg]12[grow, fill, 0::, sg]",
                "[]2[grow, fill, 0::, sg]8[]2[grow, fill, 0::, sg]"));
        pictures.setOpaque(false);
        pictures.add(caption("trial.color"));
        pictures.add(caption("trial.gray"), "wrap");
        pictures.add(color);
        pictures.add(gray, "wrap");
        pictures.add(caption("trial.squinted"));
        pictures.add(caption("trial.squinted-gray"), "wrap");
        pictures.add(seenColor);
        pictures.add(seenGray);
        return pictures;
    }

    private static JLabel caption(String key) {
        return new JLabel(Words.say(key), JLabel.CENTER);
    }

    private PaperCard card() {
        PaperCard card = new PaperCard(
                new MigLayout("insets 14 16 14 16, fill, wrap 1", "[grow, fill]", "[]10[grow, fill, 0::]"));
        card.add(told, "wmin 0");
        card.add(Controls.scroller(zones, false), "wmin 0, hmin 0");
        return card;
    }
}
