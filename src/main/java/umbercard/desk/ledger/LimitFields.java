package umbercard.desk.ledger;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;
import net.miginfocom.swing.MigLayout;
import umbercard.door.Limit;
import umbercard.door.Limits;
import umbercard.door.Rule;
import umbercard.words.Words;

/** The limits of one rule as numbers to turn, each with its unit and range. */
final class LimitFields extends JPanel {
    /** Finer than any limit is told. */
    private static final double GRID = 1e6;

    /** The words of units whose names are more than one word. */
    private static final Map<String, String> UNITS =
            Map.of("half widths", "half-widths", "of the diagonal", "of-the-diagonal");

    private final transient BiConsumer<String, Double> changed;
    private final Map<String, JSpinner> fields = new LinkedHashMap<>();
    private boolean filling;

    /** @param changed told a limit's name and its new value */
    LimitFields(BiConsumer<String, Double> changed) {
        super(new MigLayout("insets 0, wrap 3, gap 8 6", "[grow, fill, 0:0:][92!][132!]"));
        this.changed = changed;
        setOpaque(false);
    }

    /** Lays the fields of another rule. */
    void lay(Rule rule) {
        fields.clear();
        removeAll();
        new TreeMap<>(rule.limits()).forEach((name, limit) -> {
            String words = or("ledger.limit." + rule.id() + "." + name, name);
            String range = Words.say("ledger.range", limit.least(), limit.most(), unit(limit));
            JSpinner field = field(name, limit);
            field.setName("limit." + name);
            field.getAccessibleContext().setAccessibleName(Words.say("ledger.limit.spoken", words, range));
            JLabel label = new JLabel("<html>" + words + "</html>");
            label.setLabelFor(field);
            add(label);
            add(field, "w 92!");
            add(new JLabel(range));
            fields.put(name, field);
        });
        revalidate();
        repaint();
    }

    private JSpinner field(String name, Limit limit) {
        JSpinner field = new JSpinner(new SpinnerNumberModel(limit.value(), limit.least(), limit.most(), step(limit)));
        field.setEditor(new JSpinner.NumberEditor(field, "0.####"));
        field.addChangeListener(event -> {
            if (!filling) {
                changed.accept(name, Math.rint(((Number) field.getValue()).doubleValue() * GRID) / GRID);
            }
        });
        return field;
    }

    /** One for what is counted; else about a quarter of the default, as one, a tenth, a hundredth and so on. */
    static double step(Limit limit) {
        if (limit.unit().equals("count")) {
            return 1;
        }
        double usual = limit.value() > 0 ? limit.value() / 4 : (limit.most() - limit.least()) / 100;
        return Math.min(limit.most() > 1 ? 0.1 : 0.01, Math.pow(10, Math.floor(Math.log10(usual))));
    }

    /** Shows the limits in force. */
    void show(Limits limits) {
        filling = true;
        fields.forEach((name, field) -> {
            if (((Number) field.getValue()).doubleValue() != limits.get(name)) {
                field.setValue(limits.get(name));
            }
        });
        filling = false;
    }

    static String unit(Limit limit) {
        return or("ledger.unit." + UNITS.getOrDefault(limit.unit(), limit.unit()), limit.unit());
    }

    private static String or(String key, String otherwise) {
        try {
            return Words.say(key);
        } catch (MissingResourceException notOurs) {
            return otherwise;
        }
    }
}
