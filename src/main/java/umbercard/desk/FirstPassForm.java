package umbercard.desk;

import java.awt.Component;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Consumer;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSlider;
import net.miginfocom.swing.MigLayout;
import umbercard.model.Squint;
import umbercard.photo.FirstPass;
import umbercard.photo.SquintWay;
import umbercard.words.Words;

/**
 * How a first pass is to be traced: rules for the share of dark, the squint and the number of masses, and a line on what
 * came of it. A rule for dark or masses that the painter has not moved follows the photograph.
 */
final class FirstPassForm {
    /** Steps on the rule for squint, and what the last one is, as a share of the frame's diagonal. */
    private static final int STEPS = 80;

    private static final double MOST_SQUINT = 0.04;

    private static final int MOST_MASSES = 20;

    private final JPanel panel = new JPanel(new MigLayout("insets 0, gapx 14, gapy 10", "[][170!, fill][]", ""));
    private final FirstPass.Wish begun;
    private final JSlider dark = rule("dark", 1, 99);
    private final JSlider squint = rule("squint", 1, STEPS);
    private final JSlider masses = rule("masses", 2, MOST_MASSES);
    private final JCheckBox darkFollows = follows("dark");
    private final JCheckBox massesFollow = follows("masses");
    private final JLabel outcome = new JLabel(" ");
    private Consumer<FirstPass.Wish> changed = wish -> {};
    private boolean filling;

    /** @param begun the wish that an untouched form has */
    FirstPassForm(FirstPass.Wish begun) {
        this.begun = begun;
        filling = true;
        dark.setValue(50);
        squint.setValue((int) Math.round(STEPS * begun.squint().sigma() / MOST_SQUINT));
        masses.setValue(FirstPass.Wish.MASSES);
        filling = false;
        add("dark", dark, darkFollows);
        add("masses", masses, massesFollow);
        add("squint", squint, way());
        outcome.setName("first-pass-outcome");
        panel.add(outcome, "newline, span 3, growx, gaptop 6");
        listen(dark, darkFollows);
        listen(masses, massesFollow);
        squint.addChangeListener(event -> tellChanged());
    }

    private static JSlider rule(String name, int least, int most) {
        JSlider rule = new JSlider(least, most);
        rule.setName("first-pass-" + name);
        rule.setToolTipText(Words.say("desk.first-pass." + name + ".tip"));
        rule.getAccessibleContext().setAccessibleName(Words.say("desk.first-pass." + name));
        rule.getAccessibleContext().setAccessibleDescription(rule.getToolTipText());
        rule.addMouseWheelListener(event -> rule.setValue(rule.getValue() - event.getWheelRotation()));
        return rule;
    }

    /** The way to squint is the one on the desk: named here, not chosen. */
    private JLabel way() {
        String key = "desk.squint-way." + SquintWay.of(begun.squint()).key();
        JLabel way = new JLabel(Words.say(key));
        way.setName("first-pass-way");
        way.setToolTipText(Words.say(key + ".tip"));
        return way;
    }

    private static JCheckBox follows(String name) {
        JCheckBox follows = new JCheckBox(Words.say("desk.first-pass.follows"), true);
        follows.setName("first-pass-" + name + "-follows");
        follows.getAccessibleContext().setAccessibleDescription(Words.say("desk.first-pass." + name + ".follows"));
        follows.setToolTipText(Words.say("desk.first-pass." + name + ".follows"));
        return follows;
    }

    private void add(String name, JSlider rule, Component beside) {
        JLabel word = new JLabel(Words.say("desk.first-pass." + name));
        word.setLabelFor(rule);
        panel.add(word, "newline");
        panel.add(rule);
        panel.add(beside);
    }

    /** A rule that is moved no longer follows. */
    private void listen(JSlider rule, JCheckBox follows) {
        rule.addChangeListener(event -> {
            if (!filling) {
                follows.setSelected(false);
                tellChanged();
            }
        });
        follows.addActionListener(event -> tellChanged());
    }

    private void tellChanged() {
        if (!filling) {
            changed.accept(wish());
        }
    }

    /** Tells {@code listener} the wish now and whenever it changes. */
    void whenChanged(Consumer<FirstPass.Wish> listener) {
        changed = listener;
        listener.accept(wish());
    }

    JPanel panel() {
        return panel;
    }

    /** What has the focus first. */
    Component first() {
        return dark;
    }

    /** What the painter wishes. */
    FirstPass.Wish wish() {
        boolean own = !darkFollows.isSelected();
        double sigma =
                squint.getValue() == (int) Math.round(STEPS * begun.squint().sigma() / MOST_SQUINT)
                        ? begun.squint().sigma()
                        : squint.getValue() * MOST_SQUINT / STEPS;
        return new FirstPass.Wish(
                own ? OptionalDouble.of(dark.getValue() / 100.0) : OptionalDouble.empty(),
                own ? OptionalDouble.empty() : begun.split(),
                new Squint(begun.squint().way(), sigma),
                massesFollow.isSelected() ? OptionalInt.empty() : OptionalInt.of(masses.getValue()));
    }

    /** Says what came of a wish; rules that follow go where the photograph has led. */
    void tell(FirstPass.Wish wish, FirstPass.Traced traced) {
        filling = true;
        if (darkFollows.isSelected() && wish.darkShare().isEmpty()) {
            dark.setValue((int) Math.round(100 * traced.darkShare()));
        }
        if (massesFollow.isSelected() && wish.masses().isEmpty()) {
            masses.setValue(traced.masses());
        }
        filling = false;
        int asked = wish.masses().orElse(traced.masses());
        int why = asked == traced.masses()
                ? 0
                : wish.darkShare().isPresent() ? 1 : wish.split().isPresent() ? 2 : 3;
        outcome.setText(Words.say("desk.first-pass.outcome", 100 * traced.darkShare(), traced.masses(), why));
    }
}
