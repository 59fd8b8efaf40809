package umbercard.desk.notes;

import com.formdev.flatlaf.FlatClientProperties;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.box.StickChecks;
import umbercard.desk.box.StickWords;
import umbercard.desk.theme.Controls;
import umbercard.desk.theme.Keys;
import umbercard.desk.theme.WordButton;
import umbercard.kernel.Latest;
import umbercard.model.ColorNote;
import umbercard.model.Study;
import umbercard.model.Zone;
import umbercard.notes.Purposes;
import umbercard.notes.turned.Offer;
import umbercard.notes.turned.Offers;
import umbercard.words.Words;

/**
 * Strips that could be put on the card, each with its reason, to be taken or left; found in the background. Nothing is put
 * on the card unasked. Event thread only.
 */
final class OffersPage extends JPanel {
    private final transient Latest<Question, Answer> worker;
    private final JLabel title = Controls.onPaper(new JLabel());
    private final JTextArea summary = Controls.onPaper(Controls.sentence());
    private final StickChecks checks = new StickChecks(this::allow);
    private final JTextArea remarks = Controls.sentence();
    private final WordButton take;
    private final WordButton back;
    private transient Optional<Question> asked = Optional.empty();
    private transient List<Offer> offers = List.of();

    /** What is looked for, and where. */
    record Question(OfferKind kind, OfferKind.Asked asked) {}

    private record Answer(Question question, Offers found) {}

    /**
     * An empty page.
     *
     * @param taken told the notes that the painter takes, at least one
     * @param back leaves the card as it is
     */
    OffersPage(Consumer<List<ColorNote>> taken, Runnable back) {
        super(new MigLayout(
                "insets 10 16 10 16, gap 0 6, wrap 1, hidemode 3", "[grow,fill]", "[28!][][grow,fill,0::][]"));
        worker = new Latest<>(
                "umbercard-offers",
                (question, stopped) -> new Answer(question, question.kind().find(question.asked())),
                this::told,
                SwingUtilities::invokeLater);
        setOpaque(false);
        setName("notes.offers");
        title.putClientProperty(FlatClientProperties.STYLE, "font: $semibold.font");
        checks.setName("notes.offer");
        summary.setName("notes.offers.summary");
        remarks.setName("notes.offers.remarks");
        remarks.putClientProperty(FlatClientProperties.STYLE_CLASS, "paperSoft");
        take = word("take", () -> taken.accept(chosen()));
        this.back = word("back", back);
        add(title, "wmin 0");
        add(summary, "wmin 0");
        add(Controls.scroller(checks, false), "wmin 0, hmin 0");
        add(take, "split 2, growx 0, pad 0 -6 0 -6");
        add(this.back, "growx 0, gapleft push, pad 0 6 0 6");
        Keys.bind(this, WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, "ESCAPE", "back", back);
    }

    private static WordButton word(String key, Runnable action) {
        String name = "notes.offers." + key;
        return WordButton.onPaper(name, Words.say(name), Words.say(name + ".description"), action);
    }

    /** Looks for strips of a kind. */
    void ask(OfferKind kind, OfferKind.Asked about) {
        Question question = new Question(kind, about);
        asked = Optional.of(question);
        title.setText(kind.title());
        summary.setText(Words.say("notes.offers.wait"));
        fill(new Offers(List.of(), List.of()));
        worker.ask(question);
        back.requestFocusInWindow();
    }

    private void told(Answer answer) {
        if (asked.equals(Optional.of(answer.question()))) {
            boolean some = !answer.found().offers().isEmpty();
            OfferKind kind = answer.question().kind();
            summary.setText(some ? kind.summary() : kind.nothing());
            fill(answer.found());
            if (some) {
                take.requestFocusInWindow();
            }
        }
    }

    private void fill(Offers found) {
        offers = found.offers();
        Optional<Study> study = asked.map(question -> question.asked().study());
        checks.fill(offers.stream()
                .map(offer -> new StickChecks.Line(
                        offer.note().id(), offer.note().stick(), title(study, offer.note()), Words.say(offer.reason())))
                .toList());
        // Words are set within a parent only: a text area of its own has no font.
        checks.add(remarks, "span, wmin 0, growx, gaptop 4, hidemode 3");
        remarks.setText(found.remarks().stream().map(Words::say).collect(Collectors.joining("\n")));
        remarks.setVisible(!found.remarks().isEmpty());
        allow();
    }

    /** The stick, its zone and purpose, its value. */
    private static String title(Optional<Study> study, ColorNote note) {
        String zone = note.zone()
                .flatMap(id -> study.flatMap(known -> known.zone(id)))
                .map(Zone::name)
                .orElse("");
        return Stream.of(
                        StickWords.stick(note.stick()),
                        zone,
                        Purposes.words(note.purpose()),
                        StickWords.value(note.stick()))
                .filter(words -> !words.isBlank())
                .collect(Collectors.joining(" · "));
    }

    private List<ColorNote> chosen() {
        return checks.taken().stream().map(place -> offers.get(place).note()).toList();
    }

    private void allow() {
        take.setEnabled(!checks.taken().isEmpty());
    }
}
