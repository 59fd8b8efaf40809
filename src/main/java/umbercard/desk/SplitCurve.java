package umbercard.desk;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.event.MouseEvent;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JSlider;
import javax.swing.ToolTipManager;
import umbercard.color.MunsellValue;
import umbercard.photo.ValueCurve;
import umbercard.readings.Fraction;
import umbercard.words.Words;

/**
 * How much of the photograph lies below each value, as a curve: value across, share up. The split is a mark on it that is
 * dragged like that of a rule; the fractions that the trade names are dots on it, Otsu's split is a small pointer under it.
 */
final class SplitCurve extends JSlider {
    /** Steps on the way from value 0 to 10. */
    static final int STEPS = 200;

    static final double MOST_VALUE = 10;

    /** How near to a mark the pointer means it, in values. */
    private static final double NEAR = 0.12;

    private transient Optional<ValueCurve> curve = Optional.empty();
    private transient OptionalDouble split = OptionalDouble.empty();

    SplitCurve() {
        super(0, STEPS, 0);
        setName("split");
        setOpaque(false);
        setMinorTickSpacing(1);
        setMajorTickSpacing(STEPS / 20);
        ToolTipManager.sharedInstance().registerComponent(this);
        getAccessibleContext().setAccessibleName(Words.say("desk.rule.split"));
    }

    @Override
    public void updateUI() {
        setUI(new SplitCurveUI(this));
    }

    /**
     * Shows another curve.
     *
     * @param below how much lies below each value; empty while there is no photograph
     * @param at the split; empty while nothing is split
     */
    void show(Optional<ValueCurve> below, OptionalDouble at) {
        curve = below;
        split = at;
        getAccessibleContext().setAccessibleDescription(words());
        repaint();
    }

    /** The curve shown. */
    Optional<ValueCurve> curve() {
        return curve;
    }

    /** The split shown. */
    OptionalDouble split() {
        return split;
    }

    /** What the curve tells: what the split makes dark, and what the next fraction up would take. */
    String words() {
        return curve.map(this::words).orElse("");
    }

    private String words(ValueCurve below) {
        if (split.isEmpty()) {
            return Words.say("desk.curve.parts", new MunsellValue(below.otsu()));
        }
        double share = below.shareBelow(split.getAsDouble());
        String now = Words.say("desk.curve.split", new MunsellValue(split.getAsDouble()), percent(share));
        return next(share)
                .map(fraction -> now + " " + reach(fraction, below.valueFor(fraction.share())))
                .orElse(now);
    }

    private static String reach(Fraction fraction, double value) {
        return Words.say("desk.curve.reach", words(fraction), new MunsellValue(value));
    }

    /** The next of the named fractions, if the share is to grow by a point or more. */
    private static Optional<Fraction> next(double share) {
        for (Fraction fraction : Fraction.values()) {
            if (fraction.share() > share + 0.01) {
                return Optional.of(fraction);
            }
        }
        return Optional.empty();
    }

    /** Short, as the ledger's rule has it. */
    private static String words(Fraction fraction) {
        return Words.say(
                "ledger.fraction." + fraction.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    private static String percent(double share) {
        return Long.toString(Math.round(100 * share));
    }

    @Override
    public String getToolTipText(MouseEvent event) {
        double value = ((SplitCurveUI) getUI()).valueAt(event.getX());
        return curve.map(below -> tip(below, value)).orElseGet(this::getToolTipText);
    }

    /** What a place on the curve means. */
    static String tip(ValueCurve below, double value) {
        for (Fraction fraction : Fraction.values()) {
            double there = below.valueFor(fraction.share());
            if (Math.abs(there - value) < NEAR) {
                return reach(fraction, there);
            }
        }
        if (Math.abs(below.otsu() - value) < NEAR) {
            return Words.say("desk.curve.parts", new MunsellValue(below.otsu()));
        }
        return Words.say("desk.curve.below", percent(below.shareBelow(value)), new MunsellValue(value));
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(UIScale.scale(230), UIScale.scale(52));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(UIScale.scale(120), UIScale.scale(52));
    }
}
