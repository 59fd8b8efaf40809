package umbercard.desk.compare;

import com.formdev.flatlaf.FlatClientProperties;
import com.formdev.flatlaf.util.UIScale;
import java.awt.CardLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Window;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.ButtonGroup;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.session.Session;
import umbercard.desk.theme.Keys;
import umbercard.desk.theme.WordButton;
import umbercard.door.Reading;
import umbercard.kernel.Plugins;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.words.Words;

/** A dialog in which thumbnails are compared: two side by side, or all in a table. Event thread only. */
public final class Comparison {
    private static final String PAIR = "pair";
    private static final String ALL = "all";
    private static final Dimension ROOM = new Dimension(1130, 570);

    private final Session session;
    private final Measuring measuring;
    private final PairPage pair;
    private final AllPage all;
    private final CardLayout pages = new CardLayout();
    private final JPanel page = new JPanel(pages);

    private Comparison(Session session, Plugins<Reading> readings, Consumer<Thumbnail> choose) {
        this.session = session;
        Study study = session.study();
        measuring = new Measuring(study, session.photograph(), readings, this::changed);
        List<Thumbnail> first = firstTwo(session);
        pair = new PairPage(study.thumbnails(), first.get(0), first.get(1), study.ratio(), measuring);
        all = new AllPage(study.thumbnails(), study.ratio(), measuring, this::isChosen, choose);
        page.add(pair, PAIR);
        page.add(all, ALL);
        List<Thumbnail> order = new ArrayList<>(first);
        study.thumbnails().stream().filter(t -> !first.contains(t)).forEach(order::add);
        measuring.begin(order);
    }

    /**
     * Compares the thumbnails of the session's study until the painter closes the dialog: the one on the card with the
     * chosen one, or else with the next of the stack, at first.
     *
     * @param desk over whose window it opens
     * @param choose makes a thumbnail the chosen one
     * @throws IllegalStateException if the study has fewer than two
     */
    public static void open(Component desk, Session session, Plugins<Reading> readings, Consumer<Thumbnail> choose) {
        if (session.study().thumbnails().size() < 2) {
            throw new IllegalStateException("nothing to compare with");
        }
        Comparison comparison = new Comparison(session, readings, choose);
        Window window = SwingUtilities.getWindowAncestor(desk);
        JDialog dialog = comparison.dialog(window);
        dialog.setVisible(true);
        comparison.measuring.end();
        dialog.dispose();
    }

    private static List<Thumbnail> firstTwo(Session session) {
        Study study = session.study();
        List<Thumbnail> thumbnails = study.thumbnails();
        Thumbnail here = study.thumbnail(session.shown()).orElse(thumbnails.get(0));
        Optional<Thumbnail> chosen = study.chosenThumbnail().filter(t -> !t.equals(here));
        int next = (thumbnails.indexOf(here) + 1) % thumbnails.size();
        return List.of(here, chosen.orElse(thumbnails.get(next)));
    }

    private boolean isChosen(Thumbnail thumbnail) {
        return session.study().chosen().filter(thumbnail.id()::equals).isPresent();
    }

    private void changed() {
        pair.changed();
        all.changed();
    }

    private JDialog dialog(Window window) {
        JDialog dialog = new JDialog(window, Words.say("compare.title"), JDialog.ModalityType.APPLICATION_MODAL);
        dialog.setName("compare");
        JPanel content = new JPanel(new MigLayout("insets 12 16 12 16, fill", "[][]push[]", "[]8[grow, fill]"));
        ButtonGroup group = new ButtonGroup();
        content.add(word(PAIR, group, () -> {}));
        content.add(word(ALL, group, all::focus));
        WordButton close = WordButton.onDesk(
                "compare.close",
                Words.say("compare.close"),
                Words.say("compare.close"),
                () -> dialog.setVisible(false));
        content.add(close, "wrap");
        content.add(page, "span, grow, wmin 0, hmin 0");
        Keys.bind(
                dialog.getRootPane(), JPanel.WHEN_IN_FOCUSED_WINDOW, "ESCAPE", "close", () -> dialog.setVisible(false));
        dialog.setContentPane(content);
        dialog.setSize(
                Math.min(window.getWidth(), UIScale.scale(ROOM.width)),
                Math.min(window.getHeight(), UIScale.scale(ROOM.height)));
        dialog.setLocationRelativeTo(window);
        return dialog;
    }

    private JToggleButton word(String which, ButtonGroup group, Runnable then) {
        JToggleButton word = new JToggleButton(Words.say("compare." + which), which.equals(PAIR));
        word.setName("compare." + which);
        word.putClientProperty(FlatClientProperties.STYLE_CLASS, "word");
        word.putClientProperty(FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_BORDERLESS);
        word.setToolTipText(Words.say("compare." + which + ".description"));
        word.getAccessibleContext().setAccessibleDescription(word.getToolTipText());
        word.addActionListener(event -> {
            pages.show(page, which);
            then.run();
        });
        group.add(word);
        return word;
    }
}
