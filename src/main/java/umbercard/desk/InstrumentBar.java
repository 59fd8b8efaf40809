package umbercard.desk;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.KeyboardFocusManager;
import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
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

/**
 * The instruments as words, in the order of the job; one letter each takes one up, outside text. One that stops working is
 * told once, and its word can no longer be pressed.
 */
final class InstrumentBar extends JPanel {
    /** An instrument as the bar shows it; asked of the instrument once. */
    private record Word(Instrument instrument, String name, KeyStroke key, String action, JToggleButton button) {}

    private final NotanCard card;
    private final transient Plugins<Instrument> plugins;
    private final transient Consumer<String> switchedOff;
    private final transient List<Word> words = new ArrayList<>();
    private final ButtonGroup one = new ButtonGroup();

    /**
     * Takes up the first instrument that can be.
     *
     * @param switchedOff told the name of each instrument that stops working, once, on the event thread; perhaps before the
     *     window is open
     */
    InstrumentBar(NotanCard card, Plugins<Instrument> plugins, Consumer<String> switchedOff) {
        super(new MigLayout("insets 0, gapx 6"));
        this.card = card;
        this.plugins = plugins;
        this.switchedOff = switchedOff;
        setName("instruments");
        setOpaque(false);
        for (Instrument instrument : plugins.on()) {
            plugins.ask(instrument, this::word)
                    .ifPresentOrElse(
                            this::add,
                            () -> switchedOff.accept(instrument.getClass().getSimpleName()));
        }
        card.whenTaken(this::follow);
        words.stream().findFirst().ifPresent(first -> card.take(first.instrument()));
    }

    private void add(Word word) {
        words.add(word);
        one.add(word.button());
        add(word.button());
    }

    /** Shows which instrument is in hand and which no longer work. */
    private void follow() {
        List<Instrument> on = plugins.on();
        Optional<Instrument> taken = card.instrument();
        one.clearSelection();
        for (Word word : words) {
            word.button().setSelected(taken.equals(Optional.of(word.instrument())));
            if (word.button().isEnabled() && !on.contains(word.instrument())) {
                word.button().setEnabled(false);
                switchedOff.accept(word.name());
            }
        }
    }

    private Word word(Instrument instrument) {
        String id = instrument.id();
        String letter = instrument.key().toUpperCase(Locale.ROOT);
        KeyStroke key = Optional.ofNullable(KeyStroke.getKeyStroke(letter))
                .orElseThrow(() -> new IllegalArgumentException("no key is called " + letter));
        JToggleButton word = new JToggleButton(Words.say("instrument." + id + ".name"));
        word.setName("instrument-" + id);
        word.putClientProperty(FlatClientProperties.STYLE_CLASS, "word");
        word.putClientProperty(FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_BORDERLESS);
        word.setToolTipText(Words.say("desk.instrument.tip", Words.say("instrument." + id + ".tip"), letter));
        word.getAccessibleContext().setAccessibleDescription(word.getToolTipText());
        word.addActionListener(event -> {
            card.take(instrument);
            card.requestFocusInWindow();
        });
        return new Word(instrument, word.getText(), key, "take-" + id, word);
    }

    /** Lets the letters take up instruments while the bar is in sight and nothing in the window takes text. */
    void bindKeys(JRootPane window) {
        for (Word word : words) {
            window.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).put(word.key(), word.action());
            window.getActionMap().put(word.action(), new AbstractAction() {
                @Override
                public void actionPerformed(ActionEvent event) {
                    if (!word.button().isSelected()) {
                        word.button().doClick(0);
                    }
                }

                @Override
                public boolean accept(Object sender) {
                    return InstrumentBar.this.isVisible() && !takesText();
                }
            });
        }
    }

    /** A menu bar still calls itself selected when its menu has closed, so it is the open path that is asked for. */
    static boolean takesText() {
        return MenuSelectionManager.defaultManager().getSelectedPath().length > 0
                || KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner() instanceof JTextComponent;
    }
}
