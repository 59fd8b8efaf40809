package umbercard.desk.notes;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.CardLayout;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import javax.swing.ButtonGroup;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JToggleButton;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.box.StickWords;
import umbercard.desk.theme.Controls;
import umbercard.desk.theme.Keys;
import umbercard.desk.theme.Swatch;
import umbercard.desk.theme.WordButton;
import umbercard.kernel.Latest;
import umbercard.model.ColorNote;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.notes.order.Arranged;
import umbercard.notes.order.Arranging;
import umbercard.notes.order.OrderRule;
import umbercard.words.Words;
import umbercard.zones.ZoneMap;

/**
 * The order of application that the rules give the strips, with the reasons of each, and the rules, each to be passed over or
 * not; found in the background. The card is arranged only when the painter says so. Event thread only.
 */
final class ArrangePage extends JPanel {
    private static final String ORDER = "order";
    private static final String RULES = "rules";

    private final transient Latest<Question, Answer> worker;
    private final CardLayout pages = new CardLayout();
    private final JPanel middle = new JPanel(pages);
    private final JTextArea summary = Controls.onPaper(Controls.sentence());
    private final JPanel order =
            new JPanel(new MigLayout("insets 0, gap 8 6, wrap 3", "[20!,right]4[][grow,fill]", ""));
    private final JPanel rules = new JPanel(new MigLayout("insets 0, gap 0 2, wrap 1", "[grow,fill]", ""));
    private final JToggleButton orderWord = toggle(ORDER, true);
    private final WordButton take;
    private final transient Set<String> off = new TreeSet<>();
    private transient Optional<Question> asked = Optional.empty();
    private transient Optional<Answer> shown = Optional.empty();

    /** What is to be arranged, passing over which rules. */
    private record Question(Study study, Thumbnail thumbnail, Set<String> off) {}

    private record Answer(Question question, Arranged arranged) {}

    /**
     * An empty page.
     *
     * @param taken told the notes in their new order, and the ids of the rules passed over
     * @param back leaves the card as it is
     */
    ArrangePage(BiConsumer<List<ColorNote>, Set<String>> taken, Runnable back) {
        super(new MigLayout("insets 10 16 10 16, gap 0 6, wrap 1", "[grow,fill]", "[28!][][grow,fill,0::][]"));
        worker = new Latest<>(
                "umbercard-order",
                (question, stopped) -> new Answer(question, arranged(question)),
                this::told,
                SwingUtilities::invokeLater);
        setOpaque(false);
        setName("notes.arranging");
        summary.setName("notes.arranging.summary");
        order.setOpaque(false);
        order.setName("notes.arranging.order");
        rules.setOpaque(false);
        OrderRule.ALL.forEach(rule -> rules.add(check(rule)));
        middle.setOpaque(false);
        middle.add(Controls.scroller(order, false), ORDER);
        middle.add(Controls.scroller(rules, false), RULES);
        take = word(
                "take",
                () -> shown.ifPresent(answer -> taken.accept(
                        answer.arranged().notes(), answer.question().off())));
        WordButton leave = word("back", back);
        add(head(), "wmin 0");
        add(summary, "wmin 0");
        add(middle, "wmin 0, hmin 0");
        add(take, "split 2, growx 0, pad 0 -6 0 -6");
        add(leave, "growx 0, gapleft push, pad 0 6 0 6");
        Keys.bind(this, WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, "ESCAPE", "back", back);
    }

    private static Arranged arranged(Question question) {
        return Arranging.of(question.study(), ZoneMap.of(question.study(), question.thumbnail()), question.off());
    }

    private JPanel head() {
        JPanel head = new JPanel(new MigLayout("insets 0, gap 4", "[grow,fill][][]"));
        head.setOpaque(false);
        JLabel title = Controls.onPaper(new JLabel(Words.say("notes.arranging.title")));
        title.putClientProperty(FlatClientProperties.STYLE, "font: $semibold.font");
        JToggleButton rulesWord = toggle(RULES, false);
        ButtonGroup group = new ButtonGroup();
        List.of(orderWord, rulesWord).forEach(group::add);
        orderWord.addActionListener(event -> pages.show(middle, ORDER));
        rulesWord.addActionListener(event -> pages.show(middle, RULES));
        head.add(title, "wmin 0");
        head.add(orderWord);
        head.add(rulesWord);
        return head;
    }

    private static JToggleButton toggle(String key, boolean on) {
        JToggleButton toggle = Controls.onPaper(new JToggleButton(Words.say("notes.arranging." + key), on));
        String description = Words.say("notes.arranging." + key + ".description");
        toggle.setName("notes.arranging.show." + key);
        toggle.setToolTipText(description);
        toggle.getAccessibleContext().setAccessibleDescription(description);
        toggle.putClientProperty(FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_BORDERLESS);
        return toggle;
    }

    private JCheckBox check(OrderRule rule) {
        JCheckBox check = Controls.onPaper(new JCheckBox(Words.say(rule.words())));
        check.setName("notes.arranging.rule." + rule.id());
        check.setOpaque(false);
        check.addActionListener(event -> pass(rule, !check.isSelected()));
        return check;
    }

    private void pass(OrderRule rule, boolean over) {
        if (over ? off.add(rule.id()) : off.remove(rule.id())) {
            asked.ifPresent(question -> look(question.study(), question.thumbnail()));
        }
    }

    private static WordButton word(String key, Runnable action) {
        String name = "notes.arranging." + key;
        return WordButton.onPaper(name, Words.say(name), Words.say(name + ".description"), action);
    }

    /** Looks for the order of a study's notes. */
    void ask(Study study, Thumbnail thumbnail) {
        off.clear();
        off.addAll(study.rulesOff());
        for (int i = 0; i < OrderRule.ALL.size(); i++) {
            if (rules.getComponent(i) instanceof JCheckBox check) {
                check.setSelected(!off.contains(OrderRule.ALL.get(i).id()));
            }
        }
        orderWord.setSelected(true);
        pages.show(middle, ORDER);
        order.removeAll();
        look(study, thumbnail);
        take.requestFocusInWindow();
    }

    private void look(Study study, Thumbnail thumbnail) {
        Question question = new Question(study, thumbnail, Set.copyOf(off));
        asked = Optional.of(question);
        shown = Optional.empty();
        take.setEnabled(false);
        summary.setText(Words.say("notes.arranging.wait"));
        worker.ask(question);
    }

    private void told(Answer answer) {
        if (asked.equals(Optional.of(answer.question()))) {
            shown = Optional.of(answer);
            boolean same =
                    answer.arranged().notes().equals(answer.question().study().notes());
            summary.setText(summary(answer, same));
            fill(answer);
            take.setEnabled(!same
                    || !answer.question().off().equals(answer.question().study().rulesOff()));
            if (take.isEnabled() && isShowing()) {
                take.requestFocusInWindow();
            }
        }
    }

    private static String summary(Answer answer, boolean same) {
        String first = Words.say(same ? "notes.arranging.same" : "notes.arranging.changed");
        String remarks = answer.arranged().remarks().stream().map(Words::say).collect(Collectors.joining("\n"));
        return remarks.isEmpty() ? first : first + "\n" + remarks;
    }

    private void fill(Answer answer) {
        order.removeAll();
        List<ColorNote> before = answer.question().study().notes();
        List<String> ids = before.stream().map(ColorNote::id).toList();
        int number = 0;
        for (ColorNote note : answer.arranged().notes()) {
            number++;
            int was = ids.indexOf(note.id()) + 1;
            JLabel count = new JLabel(Integer.toString(number));
            count.putClientProperty(FlatClientProperties.STYLE_CLASS, "paperSoft");
            order.add(count, "aligny top, gaptop 2");
            order.add(new JLabel(new Swatch(note.stick().color(), 28)), "aligny top");
            JTextArea why = Controls.onPaper(Controls.sentence());
            why.setName("notes.arranging.why");
            why.setText(title(note, number, was) + "\n"
                    + answer.arranged().reasons(note.id()).stream()
                            .map(Words::say)
                            .collect(Collectors.joining(" ")));
            order.add(why, "wmin 0");
        }
        order.revalidate();
        order.repaint();
    }

    private static String title(ColorNote note, int number, int was) {
        String stick = StickWords.stick(note.stick());
        return number == was ? stick : Words.say("notes.arranging.moved", stick, Integer.toString(was));
    }
}
