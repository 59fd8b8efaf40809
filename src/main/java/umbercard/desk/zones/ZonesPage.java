package umbercard.desk.zones;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Component;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import umbercard.color.MunsellValue;
import umbercard.desk.session.Session;
import umbercard.desk.theme.Controls;
import umbercard.desk.theme.Keys;
import umbercard.desk.theme.Swatch;
import umbercard.desk.theme.WordButton;
import umbercard.kernel.Latest;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;
import umbercard.notan.Fold;
import umbercard.photo.FramedZones;
import umbercard.picture.MainColor;
import umbercard.picture.Picture;
import umbercard.words.Words;
import umbercard.zones.Proposal;
import umbercard.zones.ZonePair;
import umbercard.zones.ZoneProposals;

/**
 * The zones of the study, one of them open: its name, plane, distance and target value to be changed, and what is found of it
 * on the thumbnail on the card; the zones that it touches, each edge to be marked as lost. Outlines drawn while a zone is open
 * are its area. Facts are found in the background. Event thread only.
 */
public final class ZonesPage extends JPanel {
    /** The setting of the instruments that names the open zone. */
    private static final String CHOSEN = "zone";

    private final transient Session session;
    private final transient FramedZones framed = new FramedZones();
    private final transient Latest<Question, Answer> worker;
    private final JComboBox<ZoneItem> zones = Controls.choice("zones", new ZoneItem[0], ZoneItem::words);
    private final JTextField name = Controls.onPaper(new JTextField());
    private final JComboBox<Zone.Plane> plane =
            Controls.choice("plane", Zone.Plane.values(), choice -> Words.say("trade.plane." + choice.key()));
    private final JComboBox<Zone.Distance> distance =
            Controls.choice("distance", Zone.Distance.values(), choice -> Words.say("trade.distance." + choice.key()));
    private final JTextField target = Controls.onPaper(new JTextField());
    private final JTextArea facts = Controls.onPaper(Controls.sentence());
    private final JPanel colors = new JPanel(new MigLayout("insets 0, gap 12 0", "", "[]"));
    private final JPanel edges = new JPanel(new MigLayout("insets 0, gap 0 2, wrap 1", "[grow,fill]", ""));
    private final JTextArea gaps = Controls.sentence();
    private final WordButton propose;
    private final WordButton clear;
    private final WordButton remove;
    private transient Optional<Question> asked = Optional.empty();
    private transient Optional<Answer> last = Optional.empty();
    private transient Optional<String> open = Optional.empty();
    private boolean filling;

    /** A line of the list: a zone, or outlining a new one. */
    private record ZoneItem(Optional<String> id, String words) {}

    private record Question(Study study, Thumbnail thumbnail, Optional<Picture> photograph, boolean proposals) {}

    private record Answer(Question question, Zoned zoned, List<Proposal> proposals) {}

    /** The zones of the session's study; {@code close} takes the page away. */
    public ZonesPage(Session session, Runnable close) {
        super(new MigLayout(
                "insets 10 16 10 16, gap 12 2, wrap 2, hidemode 3",
                "[grow,fill,sg][grow,fill,sg]",
                "[28!][]8[][][][]8[][][]6[grow,fill,0::][][]"));
        this.session = session;
        worker = new Latest<>(
                "umbercard-zones", (question, stopped) -> answer(question), this::tell, SwingUtilities::invokeLater);
        setOpaque(false);
        setName("zones.page");
        zones.setName("zones.choice");
        zones.getAccessibleContext().setAccessibleName(Words.say("zones.choose"));
        name.setName("zones.field.name");
        plane.setName("zones.field.plane");
        distance.setName("zones.field.distance");
        target.setName("zones.field.target");
        facts.setName("zones.facts");
        gaps.setName("zones.gaps");
        gaps.putClientProperty(FlatClientProperties.STYLE_CLASS, "paperSoft");
        colors.setOpaque(false);
        edges.setOpaque(false);
        propose = word("propose", this::propose);
        clear = word("clear", () -> zone().ifPresent(known -> session.edit(ZoneEdits.clear(session.shown(), known))));
        remove = word("remove", () -> zone().ifPresent(known -> session.edit(ZoneEdits.remove(known))));
        lay(word("close", close));
        listen();
        Keys.bind(this, WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, "ESCAPE", "close", close);
        session.listen(change -> {
            if (change != Session.Change.PREVIEW && change != Session.Change.FILE) {
                follow();
            }
        });
    }

    private static WordButton word(String key, Runnable action) {
        String name = "zones.word." + key;
        return WordButton.onPaper(name, Words.say(name), Words.say(name + ".description"), action);
    }

    private void lay(WordButton close) {
        JLabel title = Controls.onPaper(new JLabel(Words.say("zones.title")));
        title.putClientProperty(FlatClientProperties.STYLE, "font: $semibold.font");
        add(title);
        add(close, "growx 0, alignx right, pad 0 6 0 6");
        add(zones, "span");
        add(Controls.caption(Words.say("zones.name"), name));
        add(Controls.caption(Words.say("zones.target"), target));
        add(name);
        add(target);
        add(Controls.caption(Words.say("zones.plane"), plane));
        add(Controls.caption(Words.say("zones.distance"), distance));
        add(plane);
        add(distance);
        add(facts, "span, wmin 0");
        add(colors, "span, wmin 0");
        add(Controls.onPaper(new JLabel(Words.say("zones.edges"))), "span");
        add(Controls.scroller(edges, false), "span, grow, wmin 0, hmin 0");
        add(gaps, "span, wmin 0");
        add(propose, "span, split 3, growx 0, pad 0 -6 0 -6");
        add(clear, "growx 0, gapleft push");
        add(remove, "growx 0, pad 0 6 0 6");
    }

    private void listen() {
        zones.addActionListener(event -> {
            if (!filling && zones.getSelectedItem() instanceof ZoneItem item) {
                open(item.id());
            }
        });
        plane.addActionListener(event -> {
            if (plane.getSelectedItem() instanceof Zone.Plane chosen) {
                change("plane", zone -> zone.withPlane(chosen));
            }
        });
        distance.addActionListener(event -> {
            if (distance.getSelectedItem() instanceof Zone.Distance chosen) {
                change("distance", zone -> zone.withDistance(chosen));
            }
        });
        name.addActionListener(event -> takeName());
        target.addActionListener(event -> takeTarget());
        onLeaving(name, this::takeName);
        onLeaving(target, this::takeTarget);
    }

    private static void onLeaving(Component field, Runnable action) {
        field.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                action.run();
            }
        });
    }

    /** Takes what is being typed, as far as it is. */
    public void settle() {
        takeName();
        takeTarget();
    }

    /** Opens a zone, or none, so that the next outline makes a new one. */
    public void open(Optional<String> zone) {
        settle();
        open = zone;
        follow();
    }

    /** Begins: the page shows, with the zone of that id open or else the one that was. */
    public void begin(Optional<String> zone) {
        open = zone.or(() -> open)
                .or(() -> session.study().zones().stream().findFirst().map(Zone::id));
        follow();
        zones.requestFocusInWindow();
    }

    /** Ends: outlines make new zones again. */
    public void end() {
        settle();
        session.settings().remove(CHOSEN);
        asked = Optional.empty();
    }

    private Optional<Zone> zone() {
        return open.flatMap(session.study()::zone);
    }

    private void change(String choice, UnaryOperator<Zone> change) {
        if (!filling) {
            zone().ifPresent(known -> session.edit(ZoneEdits.change(known, choice, change)));
        }
    }

    private void takeName() {
        String given = name.getText().strip();
        if (!given.isEmpty()
                && zone().filter(known -> !known.name().equals(given)).isPresent()) {
            change("name", zone -> zone.withName(given));
        }
    }

    /** A number of the painter's numbering; what is none stays marked and changes nothing. */
    private void takeTarget() {
        String given = target.getText().strip();
        Optional<Zone> known = zone();
        if (filling || known.isEmpty() || given.equals(said(known.get().targetValue()))) {
            return;
        }
        Optional<OptionalDouble> value = value(given);
        target.putClientProperty(
                FlatClientProperties.OUTLINE, value.isPresent() ? null : FlatClientProperties.OUTLINE_WARNING);
        value.ifPresent(wanted -> change("target", zone -> zone.withTargetValue(wanted)));
    }

    /** Empty where the words are no Munsell value from 0 to 10. */
    private static Optional<OptionalDouble> value(String given) {
        if (given.isEmpty()) {
            return Optional.of(OptionalDouble.empty());
        }
        try {
            double number = Double.parseDouble(given.replace(',', '.'));
            return number >= 0 && number <= 10 ? Optional.of(OptionalDouble.of(number)) : Optional.empty();
        } catch (NumberFormatException none) {
            return Optional.empty();
        }
    }

    private static String said(OptionalDouble value) {
        return value.isPresent() ? Words.say("zones.number", value.getAsDouble()) : "";
    }

    private void follow() {
        if (!isShowing()) {
            return;
        }
        open = open.filter(id -> session.study().zone(id).isPresent());
        open.ifPresentOrElse(
                id -> session.settings().put(CHOSEN, id),
                () -> session.settings().remove(CHOSEN));
        fill();
        ask(false);
    }

    private void fill() {
        filling = true;
        zones.removeAllItems();
        session.study().zones().forEach(zone -> zones.addItem(new ZoneItem(Optional.of(zone.id()), zone.name())));
        zones.addItem(new ZoneItem(Optional.empty(), Words.say("zones.none")));
        for (int i = 0; i < zones.getItemCount(); i++) {
            if (zones.getItemAt(i).id().equals(open)) {
                zones.setSelectedIndex(i);
            }
        }
        Optional<Zone> known = zone();
        List.of(name, plane, distance, target, clear, remove).forEach(part -> part.setEnabled(known.isPresent()));
        if (!name.isFocusOwner() || known.isEmpty()) {
            name.setText(known.map(Zone::name).orElse(""));
        }
        if (!target.isFocusOwner() || known.isEmpty()) {
            target.setText(known.map(zone -> said(zone.targetValue())).orElse(""));
            target.putClientProperty(FlatClientProperties.OUTLINE, null);
        }
        known.ifPresent(zone -> {
            plane.setSelectedItem(zone.plane());
            distance.setSelectedItem(zone.distance());
        });
        filling = false;
    }

    private void propose() {
        settle();
        ask(true);
    }

    private void ask(boolean proposals) {
        session.study().thumbnail(session.shown()).ifPresent(thumbnail -> {
            Question question = new Question(session.study(), thumbnail, session.photograph(), proposals);
            boolean known = asked.equals(Optional.of(question));
            asked = Optional.of(question);
            Optional<Answer> same = last.filter(answer -> answer.question().equals(question));
            if (same.isPresent()) {
                tell(same.get().zoned(), question.study());
            } else {
                wait("zones.wait");
            }
            if (!known) {
                worker.ask(question);
            }
        });
    }

    private Answer answer(Question question) {
        Study study = question.study();
        Thumbnail thumbnail = question.thumbnail();
        List<Proposal> proposals = question.proposals()
                ? ZoneProposals.of(study, thumbnail, Fold.of(thumbnail, study.ratio()))
                : List.of();
        return new Answer(question, Zoned.of(study, thumbnail, question.photograph(), framed), proposals);
    }

    private void tell(Answer answer) {
        if (!asked.equals(Optional.of(answer.question()))) {
            return;
        }
        last = Optional.of(answer);
        tell(answer.zoned(), answer.question().study());
        if (!answer.proposals().isEmpty()) {
            open = open.or(() -> Optional.of(answer.proposals().get(0).zone().id()));
            session.edit(ZoneEdits.add(answer.question().thumbnail().id(), answer.proposals()));
        } else if (answer.question().proposals()) {
            gaps.setText(Words.say("zones.nothing-to-propose"));
        }
    }

    /** Nothing of what was found for another zone, or before an edit, stays to be pressed. */
    private void wait(String key) {
        facts.setText(Words.say(key));
        colors.removeAll();
        edges.removeAll();
        revalidate();
        repaint();
    }

    private void tell(Zoned zoned, Study study) {
        Optional<Zoned.Facts> found = open.flatMap(zoned::of);
        facts.setText(found.map(ZonesPage::sentence)
                .orElseGet(() -> Words.say(open.isPresent() ? "zones.no-area" : "zones.draw")));
        colors.removeAll();
        found.map(Zoned.Facts::colors).orElse(List.of()).forEach(color -> colors.add(label(color)));
        edges.removeAll();
        zoned.touching().stream()
                .filter(pair -> open.filter(id -> touches(pair, id)).isPresent())
                .forEach(pair -> edges.add(check(pair, study)));
        gaps.setText(Words.say("zones.gap", 100 * zoned.gaps()));
        revalidate();
        repaint();
    }

    private static boolean touches(ZonePair pair, String zone) {
        return pair.farther().zone().id().equals(zone)
                || pair.nearer().zone().id().equals(zone);
    }

    private JCheckBox check(ZonePair pair, Study study) {
        Zone other = open.filter(pair.farther().zone().id()::equals).isPresent()
                ? pair.nearer().zone()
                : pair.farther().zone();
        JCheckBox check = Controls.onPaper(new JCheckBox(
                Words.say("zones.edge", other.name()), study.lostEdges().contains(pair.edge())));
        check.setName("zones.edge." + other.id());
        check.setOpaque(false);
        check.addActionListener(event -> session.edit(ZoneEdits.lose(pair.edge(), check.isSelected())));
        return check;
    }

    private static String sentence(Zoned.Facts facts) {
        OptionalDouble mean = MainColor.meanValue(facts.colors());
        String dark = Words.say("zones." + (facts.dark() ? "dark" : "light"));
        return mean.isPresent()
                ? Words.say("zones.fact.mean", 100 * facts.share(), dark, new MunsellValue(mean.getAsDouble()))
                : Words.say("zones.fact", 100 * facts.share(), dark);
    }

    private static JLabel label(MainColor color) {
        String words = Words.say("zones.color", 100 * color.share(), MunsellValue.of(color.color()));
        JLabel label = Controls.onPaper(new JLabel(words, new Swatch(color.color()), JLabel.LEADING));
        label.setToolTipText(words);
        return label;
    }
}
