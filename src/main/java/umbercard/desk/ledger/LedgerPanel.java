package umbercard.desk.ledger;

import com.formdev.flatlaf.FlatClientProperties;
import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.CardLayout;
import java.awt.EventQueue;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.RoundRectangle2D;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.session.Session;
import umbercard.desk.theme.Theme;
import umbercard.door.Finding;
import umbercard.door.Place;
import umbercard.door.Reading;
import umbercard.geometry.Eye;
import umbercard.kernel.Latest;
import umbercard.kernel.Plugins;
import umbercard.notan.HatchFold;
import umbercard.readings.Wishes;
import umbercard.words.Words;

/**
 * The readings of the thumbnail on the card, live while the hand draws: the dark share at once, from a fold on hatch
 * lines, the others as soon as the precise fold is there; what takes longer than a frame, when the hand rests, so that it
 * takes no time from what follows the hand. All are worked out in the background and shown as they come; until new figures
 * are there the last ones stay, dimmed if it takes long. Event thread only.
 */
public final class LedgerPanel extends JPanel {
    private static final String FIGURES = "figures";
    private static final String EMPTY = "empty";

    /** How long new figures may take before the last ones are dimmed, in milliseconds: shorter would flicker. */
    private static final int PATIENCE = 150;

    /** How long the readings may take and still follow the hand, in milliseconds: a frame. */
    private static final int FRAME = 16;

    /** How long nothing changes before the hand is taken to rest, in milliseconds. */
    private static final int REST = 100;

    /** @param resting whether the hand rests, so that there is time for what takes long */
    private record Asked(Question question, boolean resting) {}

    private final transient Session session;
    private final transient Plugins<Reading> readings;
    private final transient Latest<Question, Glanced> glances;
    private final transient Latest<Asked, Measured> worker;
    /** Used on the first worker's thread only. */
    private final transient HatchFold hatched = new HatchFold(Eye.DEFAULT);
    /** Used on the second worker's thread only. */
    private final transient Measuring measuring;

    private final Timer dimming = new Timer(PATIENCE, event -> dim());
    private final Timer resting = new Timer(REST, event -> measure(true));
    private final CardLayout pages = new CardLayout();
    private final ShareRule share = new ShareRule();
    private final HeightRule height = new HeightRule();
    private final ReadingList list;
    private transient Optional<Question> asked = Optional.empty();
    private transient Optional<Glanced> glanced = Optional.empty();
    private transient Optional<Measured> measured = Optional.empty();
    private transient Map<String, Finding> findings = Map.of();
    private transient Wishes wishes = PaintersWishes.now();
    private final transient AllReadings all;

    /**
     * The ledger of the session's thumbnail.
     *
     * @param readings those that are taken
     * @param looked told the places of the reading under the pointer or the focus, or that there are none
     * @param whatIf shows what could be tried; run when a reading that says to look again is pressed
     */
    public LedgerPanel(Session session, Plugins<Reading> readings, Consumer<List<Place>> looked, Runnable whatIf) {
        this.session = session;
        this.readings = readings;
        this.measuring = new Measuring(readings, now -> EventQueue.invokeLater(() -> show(now)));
        this.all = new AllReadings(this, readings, new LimitChanges(session, this::wish), looked);
        this.list = new ReadingList(looked, this::openAll, whatIf);
        this.glances = new Latest<>("dark share", this::glance, this::show, EventQueue::invokeLater);
        this.worker = new Latest<>(
                "readings",
                (asking, stopped) -> measuring.answer(asking.question(), asking.resting(), stopped),
                this::show,
                EventQueue::invokeLater);
        setLayout(pages);
        setOpaque(false);
        setName("ledger");
        getAccessibleContext().setAccessibleName(Words.say("ledger.name"));
        getAccessibleContext().setAccessibleDescription(Words.say("ledger.description"));
        dimming.setRepeats(false);
        resting.setRepeats(false);
        add(figures(), FIGURES);
        add(empty(), EMPTY);
        session.listen(this::changed);
        follow();
    }

    private JPanel figures() {
        JPanel page = new JPanel(new MigLayout(
                "insets 10 18 8 18, gap 28", "[200:420:420,fill]24[92!]14[grow,fill]", "[82:82:,grow,fill]"));
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
            case PREVIEW, SHOWN, PHOTOGRAPH -> follow();
            case STUDY -> {
                follow();
                tell();
            }
            case WORDS -> {
                list.sayAnew();
                tell();
            }
            case FILE -> {}
        }
    }

    /** Takes the readings as the painter wishes them from now on. */
    private void wish() {
        wishes = PaintersWishes.now();
        follow();
        tell();
    }

    private void openAll() {
        all.open();
        tell();
    }

    private void tell() {
        all.show(wishes, findings);
    }

    private void follow() {
        Optional<Question> now = session.thumbnail()
                .map(thumbnail -> new Question(session.seen(), thumbnail, wishes, session.photograph()));
        pages.show(this, now.isPresent() ? FIGURES : EMPTY);
        if (now.equals(asked)) {
            return;
        }
        asked = now;
        if (now.isEmpty()) {
            findings = Map.of();
            tell();
        }
        now.ifPresent(question -> {
            glances.ask(question);
            resting.stop();
            boolean slow = measured.filter(Measured::slow).isPresent();
            boolean late = measured.filter(last -> last.quick() > FRAME).isPresent();
            if (slow || late) {
                resting.restart();
            }
            if (!late) {
                measure(!slow);
            }
            if (!dimming.isRunning()) {
                dimming.start();
            }
        });
    }

    private void measure(boolean everything) {
        asked.ifPresent(question -> worker.ask(new Asked(question, everything)));
    }

    private Glanced glance(Question question, BooleanSupplier stopped) {
        return new Glanced(
                question.thumbnail(),
                hatched.of(question.thumbnail(), question.study().ratio()).darkShare());
    }

    private void show(Glanced now) {
        glanced = Optional.of(now);
        share.show(OptionalDouble.of(now.dark()), false);
        height.show(Optional.of(now.thumbnail()), false);
        settle();
    }

    /** Shows what is found; what is still to come stays as it was last. */
    private void show(Measured now) {
        measured = Optional.of(now);
        Map<String, Finding> merged = new LinkedHashMap<>();
        for (Reading reading : readings.on()) {
            String id = reading.id();
            Optional.ofNullable(now.findings().get(id))
                    .or(() -> Optional.ofNullable(findings.get(id))
                            .filter(last -> now.waiting().contains(id)))
                    .ifPresent(finding -> merged.put(id, finding));
        }
        findings = merged;
        list.show(merged);
        list.keepOld(now.waiting());
        tell();
        settle();
    }

    /** Waits on for figures that are not there yet. */
    private void settle() {
        dimming.stop();
        if (isGlanceOld() || !waiting().isEmpty()) {
            dimming.start();
        }
    }

    private boolean isGlanceOld() {
        return !glanced.map(Glanced::thumbnail).equals(asked.map(Question::thumbnail));
    }

    /** The readings whose figures are not those of what lies on the card now. */
    private Set<String> waiting() {
        return measured.filter(last -> asked.filter(last.question()::equals).isPresent())
                .map(Measured::waiting)
                .orElse(findings.keySet());
    }

    private void dim() {
        if (isGlanceOld()) {
            share.show(glanced.map(Glanced::dark).map(OptionalDouble::of).orElse(OptionalDouble.empty()), true);
            height.show(glanced.map(Glanced::thumbnail), true);
        }
        list.old(waiting());
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
