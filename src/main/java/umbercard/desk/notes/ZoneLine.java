package umbercard.desk.notes;

import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.session.Session;
import umbercard.desk.session.Session.Change;
import umbercard.desk.theme.Controls;
import umbercard.desk.theme.Swatch;
import umbercard.kernel.Latest;
import umbercard.model.ColorNote;
import umbercard.model.Study;
import umbercard.model.Zone;
import umbercard.photo.FramedZones;
import umbercard.photo.ZoneColors;
import umbercard.picture.MainColor;
import umbercard.words.Words;

/**
 * What the photograph is like in the zone of a color note, as the thumbnail on the card has it: its mean value, and its main
 * colors by share and value. Found in the background; not there at all where there is nothing to tell.
 */
final class ZoneLine extends JPanel {
    private final transient Session session;
    private final transient FramedZones zones = new FramedZones();
    private final transient Latest<Question, Answer> worker;
    private final transient Runnable shown;
    private final JLabel mean = Controls.onPaper(new JLabel());
    private final JPanel colors = new JPanel(new MigLayout("insets 0, gap 14 0", "", "[]"));
    private transient Optional<ColorNote> note = Optional.empty();
    private transient Optional<Question> asked = Optional.empty();

    private record Question(Zone zone, FramedZones.Asked area) {}

    private record Answer(Question question, Optional<ZoneColors> found) {}

    /** @param shown run after it has come or gone, which leaves less or more room beside it */
    ZoneLine(Session session, Runnable shown) {
        super(new MigLayout("insets 0, gap 0 3, wrap 1, fillx", "[grow, fill]", "[][]"));
        this.session = session;
        this.shown = shown;
        worker = new Latest<>(
                "umbercard-zone",
                (question, stopped) -> new Answer(question, zones.of(question.area())),
                this::tell,
                SwingUtilities::invokeLater);
        setName("notes.zone-colors");
        setOpaque(false);
        setVisible(false);
        mean.setName("notes.zone-mean");
        colors.setOpaque(false);
        add(mean, "wmin 0");
        add(colors, "wmin 0");
        session.listen(change -> {
            if (change != Change.PREVIEW && change != Change.FILE) {
                follow();
            }
        });
    }

    /** Tells of the zone of another note, or of none. */
    void show(Optional<ColorNote> selected) {
        note = selected;
        follow();
    }

    private void follow() {
        Optional<Question> now = note.flatMap(this::question);
        if (now.equals(asked)) {
            return;
        }
        asked = now;
        now.ifPresentOrElse(worker::ask, () -> put(false));
    }

    private Optional<Question> question(ColorNote selected) {
        Study study = session.study();
        return session.photograph()
                .flatMap(photograph ->
                        study.thumbnail(session.shown()).map(thumbnail -> FramedZones.in(thumbnail, study, photograph)))
                .flatMap(areas -> selected.zone()
                        .flatMap(study::zone)
                        .flatMap(zone -> Optional.ofNullable(areas.get(zone)).map(area -> new Question(zone, area))));
    }

    private void tell(Answer answer) {
        if (asked.equals(Optional.of(answer.question()))) {
            answer.found().ifPresent(found -> fill(answer.question().zone(), found));
            put(answer.found().isPresent());
        }
    }

    private void fill(Zone zone, ZoneColors found) {
        String words = Words.say("notes.zone-mean", zone.name(), found.mean().value());
        mean.setIcon(new Swatch(found.mean()));
        mean.setText(words);
        mean.setToolTipText(words);
        colors.removeAll();
        found.main().forEach(color -> colors.add(label(color)));
        getAccessibleContext().setAccessibleName(words);
        getAccessibleContext()
                .setAccessibleDescription(
                        found.main().stream().map(ZoneLine::words).collect(Collectors.joining(", ")));
    }

    private static JLabel label(MainColor color) {
        JLabel label = Controls.onPaper(new JLabel(words(color), new Swatch(color.color()), JLabel.LEADING));
        label.setName("notes.zone-color");
        return label;
    }

    private static String words(MainColor color) {
        return Words.say("notes.zone-color", 100 * color.share(), color.color().value());
    }

    private void put(boolean visible) {
        boolean was = isVisible();
        setVisible(visible);
        revalidate();
        repaint();
        if (was != visible) {
            shown.run();
        }
    }
}
