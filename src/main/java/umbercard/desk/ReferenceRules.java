package umbercard.desk;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.EventQueue;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import javax.swing.ButtonGroup;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSlider;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.canvas.NotanCard;
import umbercard.desk.canvas.SeenAs;
import umbercard.desk.session.Session;
import umbercard.desk.session.Session.Change;
import umbercard.door.Edit;
import umbercard.model.Reference;
import umbercard.model.Squint;
import umbercard.photo.SquintWay;
import umbercard.words.Message;
import umbercard.words.Words;

/**
 * How the reference is looked at: rules for fade and squint, the way to squint, the way it is seen, and the curve of its
 * values with the split on it. What can be dragged can be turned by the wheel.
 */
final class ReferenceRules extends JPanel {
    /** Steps on each rule. */
    private static final int STEPS = 100;

    /** The largest squint, as a share of the frame's diagonal. */
    private static final double MOST_SQUINT = 0.04;

    /** What a word to press has to the left of its letters: words that are not pressed stand under them. */
    static final int WORD_MARGIN = 6;

    private final Session session;
    private final NotanCard card;
    private final JSlider fade;
    private final JSlider squint;
    private final SplitCurve split = new SplitCurve();
    private final Map<SquintWay, JToggleButton> ways = new EnumMap<>(SquintWay.class);
    private final PointerLine line;
    private boolean filling;

    ReferenceRules(Session session, NotanCard card) {
        super(new MigLayout("insets 0, fillx, gap 14 0", "[][grow, fill, right]", "[]0[]0[]"));
        this.session = session;
        this.card = card;
        this.line = new PointerLine(card, split::words);
        setName("reference-rules");
        setOpaque(false);
        fade = rule(new JSlider(0, STEPS), "fade", at -> reference -> reference.withFade(at));
        squint = rule(
                new JSlider(0, STEPS),
                "squint",
                at -> reference ->
                        reference.withSquint(new Squint(reference.squint().way(), at * MOST_SQUINT)));
        rule(
                split,
                "split",
                at -> reference -> reference.withSplit(
                        at == 0 ? OptionalDouble.empty() : OptionalDouble.of(at * SplitCurve.MOST_VALUE)));
        add(rules(), "wmin 0");
        add(split, "spany 2, growy, wmax 260, alignx right, wrap");
        add(seen(), "wmin 0, wrap");
        add(line, "span, growx, wmin 0");
        session.listen(change -> {
            if (change != Change.PREVIEW) {
                fill();
            }
        });
        card.whenSeen(this::fill);
        fill();
    }

    private JPanel rules() {
        JPanel rules = row("gapx 8");
        rules.add(new JLabel(Words.say("desk.rule.fade")), "gapleft " + WORD_MARGIN);
        rules.add(fade, "w 40:100:100");
        rules.add(new JLabel(Words.say("desk.rule.squint")), "gapleft 8");
        rules.add(squint, "w 40:100:100");
        ButtonGroup one = new ButtonGroup();
        for (SquintWay way : SquintWay.values()) {
            JToggleButton word =
                    word("squint-" + way.key(), Words.say("desk.squint-way." + way.key()), () -> take(way));
            word.setToolTipText(Words.say("desk.squint-way." + way.key() + ".tip"));
            one.add(word);
            ways.put(way, word);
            rules.add(word, "gapleft 0");
        }
        return rules;
    }

    private JPanel seen() {
        JPanel seen = row("gapx 0");
        ButtonGroup one = new ButtonGroup();
        for (SeenAs way : SeenAs.values()) {
            JToggleButton word = word("seen-as-" + way.key(), Words.say("desk.seen-as." + way.key()), () -> {
                card.seeAs(way);
                fill();
            });
            word.getAccessibleContext().setAccessibleDescription(Words.say("desk.seen-as." + way.key() + ".tip"));
            word.setToolTipText(Words.say("desk.seen-as." + way.key() + ".tip"));
            word.setSelected(way == card.seenAs());
            one.add(word);
            seen.add(word);
        }
        return seen;
    }

    private static JPanel row(String gap) {
        JPanel row = new JPanel(new MigLayout("insets 0, " + gap, "", "[]"));
        row.setOpaque(false);
        return row;
    }

    private JToggleButton word(String name, String words, Runnable action) {
        JToggleButton word = new JToggleButton(words);
        word.setName(name);
        word.putClientProperty(FlatClientProperties.STYLE_CLASS, "word");
        word.putClientProperty(FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_BORDERLESS);
        word.addActionListener(event -> {
            action.run();
            if (EventQueue.getCurrentEvent() instanceof MouseEvent) {
                card.requestFocusInWindow();
            }
        });
        return word;
    }

    private void take(SquintWay way) {
        edit(
                "desk.squint-way.done",
                reference -> reference.withSquint(
                        new Squint(way.key(), reference.squint().sigma())),
                Optional.empty());
    }

    private void edit(String name, UnaryOperator<Reference> change, Optional<String> joinsWith) {
        session.edit(new Edit(
                Message.of(name), study -> study.withReference(study.reference().map(change)), joinsWith));
    }

    private JSlider rule(JSlider rule, String name, DoubleFunction<UnaryOperator<Reference>> change) {
        rule.setName(name);
        rule.setOpaque(false);
        rule.setToolTipText(Words.say("desk.rule." + name + ".tip"));
        rule.getAccessibleContext().setAccessibleName(Words.say("desk.rule." + name));
        rule.getAccessibleContext().setAccessibleDescription(rule.getToolTipText());
        rule.addMouseListener(new AtRule());
        rule.addMouseWheelListener(event -> rule.setValue(rule.getValue() - event.getWheelRotation() * 2));
        rule.addChangeListener(event -> {
            if (!filling) {
                double at = (double) rule.getValue() / rule.getMaximum();
                edit("desk.rule." + name + ".done", change.apply(at), Optional.of(name));
            }
        });
        return rule;
    }

    private void fill() {
        filling = true;
        set(fade, Reference::fade, 1);
        set(squint, reference -> reference.squint().sigma(), MOST_SQUINT);
        OptionalDouble at = splitSeen();
        set(split, reference -> at.orElse(0), SplitCurve.MOST_VALUE);
        split.setEnabled(split.isEnabled() && card.seenAs().splits());
        split.show(card.valueCurve(), at);
        Optional<SquintWay> way = session.study().reference().map(r -> SquintWay.of(r.squint()));
        ways.forEach((each, word) -> {
            word.setEnabled(way.isPresent());
            word.setSelected(way.filter(each::equals).isPresent());
        });
        line.rest();
        filling = false;
    }

    /** The painter's own split, else the one that the photograph is seen with; none while it is not split. */
    private OptionalDouble splitSeen() {
        if (!card.seenAs().splits()) {
            return OptionalDouble.empty();
        }
        OptionalDouble own = session.study().reference().map(Reference::split).orElse(OptionalDouble.empty());
        return own.isPresent() ? own : card.split();
    }

    private void set(JSlider rule, ToDoubleFunction<Reference> figure, double most) {
        Optional<Reference> reference = session.study().reference();
        rule.setEnabled(reference.isPresent());
        rule.setValue(reference
                .map(r -> (int) Math.round(rule.getMaximum() * figure.applyAsDouble(r) / most))
                .orElse(0));
    }

    /** While the pointer is at a rule the darks let the photograph through; the keys go back to the card after a drag. */
    private final class AtRule extends MouseAdapter {
        @Override
        public void mouseEntered(MouseEvent event) {
            card.seeThrough(true);
        }

        @Override
        public void mouseExited(MouseEvent event) {
            card.seeThrough(false);
        }

        @Override
        public void mouseReleased(MouseEvent event) {
            card.requestFocusInWindow();
        }
    }
}
