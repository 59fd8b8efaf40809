package umbercard.desk;

import java.awt.Dimension;
import java.awt.EventQueue;
import java.util.List;
import java.util.Optional;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.Timer;
import javax.swing.WindowConstants;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.ledger.LedgerPanel;
import umbercard.desk.notes.ColorCard;
import umbercard.desk.session.Session;
import umbercard.desk.stack.StackPanel;
import umbercard.desk.theme.PaperCard;
import umbercard.desk.theme.Theme;
import umbercard.model.Study;
import umbercard.readings.Evaluation;

/**
 * Opens the panels side by side, as they lie on the desk, to be looked at. Arguments: {@code dark}, {@code box}, {@code
 * many} (200 sticks and 14 notes), {@code empty}, {@code even} (shows the second thumbnail), {@code change} (to the dark theme,
 * while it is open).
 */
public final class PanelsMain {
    private PanelsMain() {}

    /** Opens the window. */
    public static void main(String[] arguments) {
        List<String> given = List.of(arguments);
        EventQueue.invokeLater(() -> {
            Theme.install(given.contains("dark"));
            JFrame frame = new JFrame("panels");
            frame.setUndecorated(true);
            frame.setDefaultCloseOperation(WindowConstants.EXIT_ON_CLOSE);
            Session session = new Session(study(given), Optional.empty());
            if (given.contains("even")) {
                session.show("t2");
            }
            ColorCard card = new ColorCard(session, () -> {});
            frame.setContentPane(panels(session, card));
            frame.setSize(new Dimension(1280, 700));
            frame.setVisible(true);
            if (given.contains("box")) {
                card.openBox();
            }
            if (given.contains("change")) {
                Timer later = new Timer(1500, event -> Theme.install(true));
                later.setRepeats(false);
                later.start();
            }
        });
    }

    private static Study study(List<String> given) {
        Study study = KilnHill.study();
        if (given.contains("many")) {
            return PanelSamples.many(study);
        }
        return given.contains("empty")
                ? study.withNotes(List.of()).withBox(Optional.empty()).withThumbnails(List.of())
                : study;
    }

    /** The panels as they lie on the desk, with an empty card in the place of the canvas. */
    static JPanel panels(Session session, ColorCard card) {
        JPanel desk = new JPanel(
                new MigLayout("insets 56 14 14 18, gap 16 16", "[132!][grow,fill][432!,fill]", "[grow,fill][114!]"));
        desk.add(new StackPanel(session, Evaluation.find()), "growy");
        desk.add(new PaperCard(new MigLayout()));
        desk.add(card, "wrap");
        desk.add(new LedgerPanel(session, Evaluation.find(), places -> {}, () -> {}), "span, growx, growy");
        return desk;
    }
}
