package umbercard.desk.theme;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

class KeysTest {
    private final JPanel panel = new JPanel();
    private final List<String> done = new ArrayList<>();

    /** Whether the stroke is bound to something that can be done now; if so, does it. */
    private boolean strike(String stroke) {
        KeyStroke key = KeyStroke.getKeyStroke(stroke);
        KeyEvent event = new KeyEvent(
                panel, KeyEvent.KEY_PRESSED, 0, key.getModifiers(), key.getKeyCode(), KeyEvent.CHAR_UNDEFINED);
        Object name = panel.getInputMap(panel.getConditionForKeyStroke(key)).get(key);
        return SwingUtilities.notifyAction(panel.getActionMap().get(name), key, event, panel, key.getModifiers());
    }

    @Test
    void aStrokeDoesWhatItIsBoundTo() {
        Keys.bind(panel, JComponent.WHEN_FOCUSED, "alt UP", "earlier", () -> done.add("earlier"));
        Keys.bind(panel, JComponent.WHEN_FOCUSED, "DELETE", "remove", () -> done.add("remove"));
        assertThat(strike("alt UP")).isTrue();
        assertThat(strike("DELETE")).isTrue();
        assertThat(done).containsExactly("earlier", "remove");
        assertThat(panel.getActionForKeyStroke(KeyStroke.getKeyStroke("UP"))).isNull();
    }

    @Test
    void itIsBoundWhereItIsToBe() {
        int within = JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT;
        Keys.bind(panel, within, "ESCAPE", "close", () -> done.add("close"));
        assertThat(panel.getConditionForKeyStroke(KeyStroke.getKeyStroke("ESCAPE")))
                .isEqualTo(within);
    }

    @Test
    void whatCannotBeDoneNowLeavesTheStrokeToOthers() {
        AtomicBoolean open = new AtomicBoolean();
        Keys.bindWhile(open::get, panel, JComponent.WHEN_FOCUSED, "ESCAPE", "close", () -> done.add("close"));
        assertThat(strike("ESCAPE")).isFalse();
        assertThat(done).isEmpty();
        open.set(true);
        assertThat(strike("ESCAPE")).isTrue();
        assertThat(done).containsExactly("close");
    }

    @Test
    void aStrokeThatCannotBeReadIsADefect() {
        assertThatThrownBy(() -> Keys.bind(panel, JComponent.WHEN_FOCUSED, "escape please", "close", () -> {}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("escape please");
    }
}
