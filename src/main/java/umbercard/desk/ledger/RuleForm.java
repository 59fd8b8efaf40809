package umbercard.desk.ledger;

import com.formdev.flatlaf.FlatClientProperties;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.theme.Controls;
import umbercard.door.Rule;
import umbercard.readings.RuleWords;
import umbercard.words.Words;

/** The rule of one reading: in words, its source, its limits, and how far changes of them reach. */
final class RuleForm extends JPanel {
    private final transient LimitChanges changes;
    private final JLabel name = new JLabel(" ");
    private final JTextArea sentence = Controls.sentence();
    private final JTextArea source = Controls.sentence();
    private final JTextArea note = Controls.sentence();
    private final Map<Scope, JRadioButton> scopes = new EnumMap<>(Scope.class);
    private final LimitFields limits;
    private final JCheckBox silent = new JCheckBox(Words.say("ledger.silence"));
    private final JButton reset;
    private final JButton resetAll;
    private transient Optional<Rule> shown = Optional.empty();

    RuleForm(LimitChanges changes) {
        super(new MigLayout(
                "insets 0, wrap 1, hidemode 3, gap 0", "[grow, fill, 0:0:]", "[]8[]8[]14[]6[]10[]10[]10[]push[]"));
        this.changes = changes;
        setOpaque(false);
        setName("rule");
        sentence.setName("rule.sentence");
        source.setName("rule.source");
        note.setName("rule.note");
        limits = new LimitFields((limit, value) -> shown.ifPresent(rule -> changes.limit(scope(), rule, limit, value)));
        silent.setName("rule.silence");
        silent.addActionListener(event -> shown.ifPresent(rule -> changes.silence(scope(), rule, silent.isSelected())));
        reset = button("reset", () -> shown.ifPresent(rule -> changes.reset(scope(), rule)));
        resetAll = button("reset-all", () -> changes.resetAll(scope()));
        name.putClientProperty(FlatClientProperties.STYLE, "font: $semibold.font");
        source.putClientProperty(FlatClientProperties.STYLE, "font: -1");
        sentence.setFocusable(true);
        sentence.getAccessibleContext().setAccessibleName(Words.say("ledger.rule"));
        source.getAccessibleContext().setAccessibleName(Words.say("ledger.source"));
        add(name);
        add(sentence, "wmin 0");
        add(source, "wmin 0");
        add(scopes());
        add(limits);
        add(silent, "growx 0");
        add(note, "wmin 0");
        add(reset, "split 2, growx 0");
        add(resetAll, "growx 0, gapright push");
    }

    private static JButton button(String key, Runnable action) {
        JButton button = new JButton(Words.say("ledger." + key));
        button.setName("rule." + key);
        button.setToolTipText(Words.say("ledger." + key + ".description"));
        button.getAccessibleContext().setAccessibleDescription(button.getToolTipText());
        button.addActionListener(event -> action.run());
        return button;
    }

    private JPanel scopes() {
        JPanel row = new JPanel(new MigLayout("insets 0, gap 12"));
        row.setOpaque(false);
        ButtonGroup group = new ButtonGroup();
        for (Scope scope : Scope.values()) {
            JRadioButton choice = new JRadioButton(Words.say("ledger.scope." + scope.key()), scope == Scope.STUDY);
            choice.setName("scope." + scope.key());
            choice.addActionListener(event -> refresh());
            group.add(choice);
            scopes.put(scope, choice);
            row.add(choice);
        }
        return row;
    }

    private Scope scope() {
        JRadioButton every = scopes.get(Scope.EVERY_STUDY);
        return every != null && every.isSelected() ? Scope.EVERY_STUDY : Scope.STUDY;
    }

    /** Shows another rule, or anew what is in force for the one that is shown. */
    void show(Rule rule) {
        if (shown.filter(rule::equals).isEmpty()) {
            shown = Optional.of(rule);
            name.setText(RuleWords.name(rule));
            source.setText(Words.say("ledger.source.said", rule.source()));
            limits.lay(rule);
        }
        refresh();
    }

    private void refresh() {
        resetAll.setEnabled(changes.isAnyChanged(scope()));
        shown.ifPresent(rule -> {
            sentence.setText(RuleWords.sentence(rule, changes.limits(scope(), rule), Words.values()));
            limits.show(changes.limits(scope(), rule));
            silent.setSelected(changes.isSilenced(scope(), rule));
            reset.setEnabled(changes.isChanged(scope(), rule));
            Optional<String> other = other(rule);
            note.setVisible(other.isPresent());
            note.setText(other.orElse(""));
        });
    }

    /** What a change of the other reach does to this one, for a word to the painter. */
    private Optional<String> other(Rule rule) {
        if (scope() == Scope.EVERY_STUDY) {
            return changes.isChanged(Scope.STUDY, rule)
                    ? Optional.of(Words.say("ledger.note.study"))
                    : Optional.empty();
        }
        return changes.isSilenced(Scope.EVERY_STUDY, rule)
                ? Optional.of(Words.say("ledger.note.every-study"))
                : Optional.empty();
    }
}
