package umbercard.desk;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.EventQueue;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import javax.swing.ButtonGroup;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSlider;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.canvas.NotanCard;
import umbercard.desk.canvas.SeenAs;
import umbercard.desk.session.Session;
import umbercard.door.Edit;
import umbercard.model.Reference;
import umbercard.model.Squint;
import umbercard.words.Message;
import umbercard.words.Words;

/** How the reference is looked at: rules for fade, squint and split, dragged or turned by the wheel, and the way it is seen. */
final class ReferenceRules extends JPanel {
    /** Steps on each rule. */
    private static final int STEPS = 100;

    /** The largest squint, as a share of the frame's diagonal. */
    private static final double MOST_SQUINT = 0.04;

    private static final double MOST_VALUE = 10;

    private final Session session;
    private final NotanCard card;
    private final JSlider fade;
    private final JSlider squint;
    private final JSlider split;
    private final JLabel splitWord = new JLabel(Words.say("desk.rule.split"));
    private boolean filling;

    ReferenceRules(Session session, NotanCard card) {
        super(new MigLayout("insets 0, gapx 8, hidemode 3"));
        this.session = session;
        this.card = card;
        setName("reference-rules");
        setOpaque(false);
        fade = rule("fade", at -> reference -> reference.withFade(at));
        squint = rule(
                "squint",
                at -> reference ->
                        reference.withSquint(new Squint(reference.squint().way(), at * MOST_SQUINT)));
        split = rule(
                "split",
                at -> reference ->
                        reference.withSplit(at == 0 ? OptionalDouble.empty() : OptionalDouble.of(at * MOST_VALUE)));
        add(new JLabel(Words.say("desk.rule.fade")));
        add(fade, "w 40:130:130");
        add(new JLabel(Words.say("desk.rule.squint")), "gapleft 12");
        add(squint, "w 40:130:130");
        addWays();
        add(splitWord, "gapleft 12");
        add(split, "w 40:110:110");
        session.listen(change -> fill());
        fill();
    }

    private void addWays() {
        ButtonGroup one = new ButtonGroup();
        for (SeenAs way : SeenAs.values()) {
            JToggleButton word = new JToggleButton(Words.say("desk.seen-as." + way.key()), way == card.seenAs());
            word.setName("seen-as-" + way.key());
            word.putClientProperty(FlatClientProperties.STYLE_CLASS, "word");
            word.putClientProperty(FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_BORDERLESS);
            word.addActionListener(event -> {
                card.seeAs(way);
                fill();
                if (EventQueue.getCurrentEvent() instanceof MouseEvent) {
                    card.requestFocusInWindow();
                }
            });
            one.add(word);
            add(word, way == SeenAs.COLOR ? "gapleft 12" : "gapleft 0");
        }
    }

    private JSlider rule(String name, DoubleFunction<java.util.function.UnaryOperator<Reference>> change) {
        JSlider rule = new JSlider(0, STEPS);
        rule.setName(name);
        rule.setOpaque(false);
        rule.setToolTipText(Words.say("desk.rule." + name + ".tip"));
        rule.getAccessibleContext().setAccessibleName(Words.say("desk.rule." + name));
        rule.getAccessibleContext().setAccessibleDescription(rule.getToolTipText());
        rule.addMouseListener(new AtRule());
        rule.addMouseWheelListener(event -> rule.setValue(rule.getValue() - event.getWheelRotation() * 2));
        rule.addChangeListener(event -> {
            if (!filling) {
                double at = (double) rule.getValue() / STEPS;
                session.edit(new Edit(
                        Message.of("desk.rule." + name + ".done"),
                        study -> study.withReference(study.reference().map(change.apply(at))),
                        Optional.of(name)));
            }
        });
        return rule;
    }

    private void fill() {
        filling = true;
        set(fade, Reference::fade, 1);
        set(squint, reference -> reference.squint().sigma(), MOST_SQUINT);
        set(split, reference -> reference.split().orElse(0), MOST_VALUE);
        boolean splits = card.seenAs() == SeenAs.TWO_VALUES;
        split.setVisible(splits);
        splitWord.setVisible(splits);
        filling = false;
    }

    private void set(JSlider rule, ToDoubleFunction<Reference> figure, double most) {
        Optional<Reference> reference = session.study().reference();
        rule.setEnabled(reference.isPresent());
        rule.setValue(reference
                .map(r -> (int) Math.round(STEPS * figure.applyAsDouble(r) / most))
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
