package umbercard.desk.ledger;

import com.formdev.flatlaf.FlatClientProperties;
import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.CardLayout;
import java.awt.EventQueue;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.session.Session;
import umbercard.desk.theme.Theme;
import umbercard.door.Place;
import umbercard.door.Reading;
import umbercard.kernel.Latest;
import umbercard.kernel.Plugins;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.notan.Design;
import umbercard.notan.FoldCache;
import umbercard.readings.Evaluation;
import umbercard.words.Words;

/**
 * The readings of the thumbnail on the card, live while the hand draws. They are taken in the background; until the new
 * ones are there the last ones stay, dimmed if it takes long. Event thread only.
 */
public final class LedgerPanel extends JPanel {
    private static final String FIGURES = "figures";
    private static final String EMPTY = "empty";

    /** How long new figures may take before the last ones are dimmed, in milliseconds: shorter would flicker. */
    private static final int PATIENCE = 150;

    private record Question(Study study, Thumbnail thumbnail) {}

    private final transient Session session;
    private final transient Plugins<Reading> readings;
    private final transient Latest<Question, Measured> worker;
    /** Used on the worker's thread only. */
    private final transient FoldCache folds = new FoldCache();

    private final Timer dimming = new Timer(PATIENCE, event -> dim(true));
    private final CardLayout pages = new CardLayout();
    private final ShareRule share = new ShareRule();
    private final HeightRule height = new HeightRule();
    private final ReadingList list;
    private transient Optional<Question> asked = Optional.empty();
    private transient Optional<Measured> shown = Optional.empty();

    /**
     * The ledger of the session's thumbnail.
     *
     * @param readings those that are taken
     * @param looked told the places of the reading under the pointer or the focus, or that there are none
     */
    public LedgerPanel(Session session, Plugins<Reading> readings, Consumer<List<Place>> looked) {
        this.session = session;
        this.readings = readings;
        this.list = new ReadingList(looked);
        this.worker = new Latest<>("readings", this::measure, this::show, EventQueue::invokeLater);
        setLayout(pages);
        setOpaque(false);
        setName("ledger");
        getAccessibleContext().setAccessibleName(Words.say("ledger.name"));
        getAccessibleContext().setAccessibleDescription(Words.say("ledger.description"));
        dimming.setRepeats(false);
        add(figures(), FIGURES);
        add(empty(), EMPTY);
        session.listen(this::changed);
        follow();
    }

    private JPanel figures() {
        JPanel page = new JPanel(
                new MigLayout("insets 15 18 15 18, gap 28", "[200:540:540,fill]24[92!]14[grow,fill]", "[82:82:,fill]"));
        page.setOpaque(false);
        page.add(share);
        page.add(height);
        page.add(list);
        return page;
    }

    private static JLabel empty() {
        JLabel label = new JLabel(Words.say("ledger.empty"), JLabel.CENTER);
        label.putClientProperty(FlatClientProperties.STYLE, "foreground: $Umbercard.onSheetSoft");
        return label;
    }

    private void changed(Session.Change change) {
        switch (change) {
            case STUDY, PREVIEW, SHOWN -> follow();
            case PHOTOGRAPH, FILE -> {}
        }
    }

    private void follow() {
        Optional<Question> now = session.thumbnail().map(thumbnail -> new Question(session.seen(), thumbnail));
        pages.show(this, now.isPresent() ? FIGURES : EMPTY);
        if (now.equals(asked)) {
            return;
        }
        asked = now;
        now.ifPresent(question -> {
            worker.ask(question);
            if (!dimming.isRunning()) {
                dimming.start();
            }
        });
    }

    private Measured measure(Question question, BooleanSupplier stopped) {
        Design design = folds.of(question.thumbnail(), question.study().ratio());
        return new Measured(
                question.thumbnail(),
                design.darkShare(),
                Evaluation.of(readings, question.study(), question.thumbnail(), design, Optional.empty(), stopped));
    }

    private void show(Measured measured) {
        dimming.stop();
        shown = Optional.of(measured);
        list.show(measured.findings());
        dim(false);
        boolean more = asked.map(Question::thumbnail)
                .filter(measured.thumbnail()::equals)
                .isEmpty();
        if (more) {
            dimming.start();
        }
    }

    private void dim(boolean old) {
        OptionalDouble dark = shown.map(m -> OptionalDouble.of(m.dark())).orElse(OptionalDouble.empty());
        Optional<Thumbnail> thumbnail = shown.map(Measured::thumbnail);
        share.show(dark, old);
        height.show(thumbnail, old);
        list.old(old);
    }

    @Override
    protected void paintComponent(Graphics g) {
        Graphics2D smooth = Theme.smooth(g);
        float corner = UIScale.scale(6f);
        var sheet = new RoundRectangle2D.Float(.5f, .5f, getWidth() - 1f, getHeight() - 1f, corner, corner);
        smooth.setColor(Theme.color("Umbercard.sheet"));
        smooth.fill(sheet);
        smooth.setColor(Theme.color("Umbercard.edge"));
        smooth.setStroke(new BasicStroke(1));
        smooth.draw(sheet);
        smooth.dispose();
    }
}
