package umbercard.desk;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.KeyboardFocusManager;
import java.awt.event.ActionEvent;
import java.util.List;
import java.util.Locale;
import javax.swing.AbstractAction;
import javax.swing.ButtonGroup;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JRootPane;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
import javax.swing.MenuSelectionManager;
import javax.swing.text.JTextComponent;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.canvas.NotanCard;
import umbercard.door.Instrument;
import umbercard.kernel.Plugins;
import umbercard.words.Words;

/** The instruments as words, in the order of the job; one letter each takes one up, outside text. */
final class InstrumentBar extends JPanel {
    private final NotanCard card;
    private final List<Instrument> instruments;

    InstrumentBar(NotanCard card, Plugins<Instrument> plugins) {
        super(new MigLayout("insets 0, gapx 6"));
        this.card = card;
        this.instruments = plugins.on();
        setName("instruments");
        setOpaque(false);
        ButtonGroup one = new ButtonGroup();
        for (Instrument instrument : instruments) {
            JToggleButton word = word(instrument);
            one.add(word);
            add(word);
        }
        instruments.stream().findFirst().ifPresent(first -> {
            card.take(first);
            one.getElements().nextElement().setSelected(true);
        });
    }

    private JToggleButton word(Instrument instrument) {
        JToggleButton word = new JToggleButton(Words.say("instrument." + instrument.id() + ".name"));
        word.setName("instrument-" + instrument.id());
        word.putClientProperty(FlatClientProperties.STYLE_CLASS, "word");
        word.putClientProperty(FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_BORDERLESS);
        word.setToolTipText(Words.say(
                "desk.instrument.tip",
                Words.say("instrument." + instrument.id() + ".tip"),
                instrument.key().toUpperCase(Locale.ROOT)));
        word.getAccessibleContext().setAccessibleDescription(word.getToolTipText());
        word.addActionListener(event -> {
            card.take(instrument);
            card.requestFocusInWindow();
        });
        return word;
    }

    /** Lets the letters take up instruments while nothing in the window takes text. */
    void bindKeys(JRootPane window) {
        for (int i = 0; i < instruments.size(); i++) {
            Instrument instrument = instruments.get(i);
            JToggleButton word = (JToggleButton) getComponent(i);
            String action = "take-" + instrument.id();
            window.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW)
                    .put(KeyStroke.getKeyStroke(instrument.key().toUpperCase(Locale.ROOT)), action);
            window.getActionMap().put(action, new AbstractAction() {
                @Override
                public void actionPerformed(ActionEvent event) {
                    if (!card.instrument().map(instrument::equals).orElse(false)) {
                        word.doClick(0);
                    }
                }

                @Override
                public boolean accept(Object sender) {
                    return !takesText();
                }
            });
        }
    }

    /** A menu bar still calls itself selected when its menu has closed, so it is the open path that is asked for. */
    private static boolean takesText() {
        return MenuSelectionManager.defaultManager().getSelectedPath().length > 0
                || KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner() instanceof JTextComponent;
    }
}
