package umbercard.desk.box;

import com.formdev.flatlaf.FlatClientProperties;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.theme.Controls;
import umbercard.desk.theme.Keys;
import umbercard.desk.theme.WordButton;
import umbercard.model.Stick;
import umbercard.notes.SettingOut;
import umbercard.notes.Suggestion;
import umbercard.words.Words;

/** What could be set out for the zones of the thumbnail on the card, and what each stick is for. Nothing is set out unasked. */
final class SuggestionView extends JPanel {
    /** A word's letters, not its frame, stand at the edge. */
    private static final String LEFT_EDGE = "pad 0 -6 0 -6";

    private final JComboBox<Integer> most;
    private final JTextArea summary = Controls.onPaper(Controls.sentence());
    private final StickChecks picks = new StickChecks(this::allow);
    private final JTextArea missed = Controls.sentence();
    private final List<WordButton> acts;
    private final WordButton back;
    private transient Optional<ZoneQuestions.Answer> shown = Optional.empty();

    /**
     * @param asked run when another number of sticks is wanted
     * @param only sets out these and no others
     * @param also sets out these as well
     * @param back leaves all as it is
     */
    SuggestionView(Runnable asked, Consumer<List<Stick>> only, Consumer<List<Stick>> also, Runnable back) {
        super(new MigLayout("insets 0, gap 0 6, wrap 1, hidemode 3", "[grow,fill]", "[][][grow,fill,0::][]"));
        setOpaque(false);
        setName("box.suggestion");
        picks.setName("box.suggest");
        summary.setName("box.suggest.summary");
        missed.setName("box.suggest.missed");
        Integer[] numbers = IntStream.rangeClosed(SettingOut.Wish.LEAST_MOST, SettingOut.Wish.MOST_MOST)
                .boxed()
                .toArray(Integer[]::new);
        most = Controls.choice("box.suggest.most", numbers, number -> Words.say("box.suggest.most", number));
        most.getAccessibleContext().setAccessibleName(Words.say("box.suggest.most.name"));
        most.setSelectedItem(SettingOut.Wish.USUAL.most());
        most.addActionListener(event -> {
            wait("box.suggest.wait");
            asked.run();
        });
        missed.putClientProperty(FlatClientProperties.STYLE_CLASS, "paperSoft");
        acts = List.of(
                word("only", () -> only.accept(picks.chosen())), word("also", () -> also.accept(picks.chosen())));
        this.back = word("back", back);
        JLabel title = Controls.onPaper(new JLabel(Words.say("box.suggest.title")));
        title.putClientProperty(FlatClientProperties.STYLE, "font: $semibold.font");
        JPanel head = new JPanel(new MigLayout("insets 0", "[grow,fill][]", "[28!]"));
        head.setOpaque(false);
        head.add(title, "wmin 0");
        head.add(most);
        JPanel words = new JPanel(new MigLayout("insets 0, gap 8, hidemode 3"));
        words.setOpaque(false);
        acts.forEach(act -> words.add(act, LEFT_EDGE));
        words.add(this.back, LEFT_EDGE);
        add(head);
        add(summary, "wmin 0");
        add(Controls.scroller(picks, false), "wmin 0, hmin 0");
        add(words);
        Keys.bind(this, WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, "ESCAPE", "back", back);
    }

    private static WordButton word(String key, Runnable action) {
        String name = "box.suggest." + key;
        return WordButton.onPaper(name, Words.say(name), Words.say(name + ".description"), action);
    }

    /** How many sticks are wanted at most. */
    int most() {
        return most.getItemAt(most.getSelectedIndex());
    }

    /** Says that it is being looked for. */
    void begin() {
        wait("box.suggest.wait");
        back.requestFocusInWindow();
    }

    private void wait(String key) {
        shown = Optional.empty();
        fill(List.of());
        summary.setText(Words.say(key));
        missed.setVisible(false);
    }

    /** Shows what was found; without a suggestion, what there should be for one. What the painter unmarked stays so. */
    void show(ZoneQuestions.Answer answer) {
        if (shown.equals(Optional.of(answer))) {
            return;
        }
        Optional<Suggestion> suggestion = answer.suggestion();
        if (suggestion.isEmpty()) {
            wait(answer.zones().isEmpty() ? "box.zone.none" : "box.zone.nothing-owned");
        }
        suggestion.ifPresent(this::show);
        shown = Optional.of(answer);
    }

    private void show(Suggestion found) {
        summary.setText(Words.say(found.summary()));
        fill(found.picks());
        String lacking = Stream.concat(
                        found.lacks().stream(), found.missed().stream().map(Suggestion.Missed::said))
                .map(Words::say)
                .collect(Collectors.joining("\n"));
        missed.setText(lacking);
        missed.setVisible(!lacking.isEmpty());
    }

    private void fill(List<Suggestion.Pick> now) {
        picks.fill(now.stream()
                .map(pick -> new StickChecks.Line(
                        pick.stick().id(), pick.stick(), StickWords.stick(pick.stick()), Words.say(pick.reason())))
                .toList());
        picks.add(missed, "span, wmin 0, growx, gaptop 4, hidemode 3");
        allow();
    }

    private void allow() {
        acts.forEach(act -> act.setEnabled(!picks.chosen().isEmpty()));
    }
}
