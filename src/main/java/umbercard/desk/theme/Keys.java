package umbercard.desk.theme;

import java.awt.event.ActionEvent;
import java.util.function.BooleanSupplier;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** Binds keys to what they do. */
public final class Keys {
    private Keys() {}

    /**
     * Runs the action when the key is struck.
     *
     * @param when {@link JComponent#WHEN_FOCUSED}, {@link JComponent#WHEN_ANCESTOR_OF_FOCUSED_COMPONENT} or {@link
     *     JComponent#WHEN_IN_FOCUSED_WINDOW}
     * @param stroke as {@link KeyStroke#getKeyStroke(String)} reads it, for example {@code alt UP}
     * @param name of the action, by which several strokes may share it
     * @throws IllegalArgumentException if the stroke cannot be read: a defect
     */
    public static void bind(JComponent component, int when, String stroke, String name, Runnable action) {
        bindWhile(() -> true, component, when, stroke, name, action);
    }

    /**
     * The same while {@code possible} is true; the rest of the time the key is left to whatever else it is bound to.
     *
     * @throws IllegalArgumentException if the stroke cannot be read: a defect
     */
    public static void bindWhile(
            BooleanSupplier possible, JComponent component, int when, String stroke, String name, Runnable action) {
        KeyStroke key = KeyStroke.getKeyStroke(stroke);
        if (key == null) {
            throw new IllegalArgumentException("no key stroke: " + stroke);
        }
        component.getInputMap(when).put(key, name);
        component.getActionMap().put(name, new AbstractAction() {
            @Override
            public boolean isEnabled() {
                return possible.getAsBoolean();
            }

            @Override
            public void actionPerformed(ActionEvent event) {
                action.run();
            }
        });
    }
}
