package umbercard.desk.notes;

import java.util.List;
import java.util.function.BooleanSupplier;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.event.PopupMenuEvent;
import javax.swing.event.PopupMenuListener;
import umbercard.words.Words;

/**
 * Something to do with the color notes; the card's words, its popup and the desk's menu all offer the same. Event thread only.
 *
 * @param name the key of its words, after {@code notes.}
 * @param keys the stroke for it while the strips have the keys, as {@link javax.swing.KeyStroke#getKeyStroke(String)} reads
 *     it; empty for none
 * @param opensGroup whether a line parts it from what stands before it in a menu
 * @param possible whether it can be done now
 */
record NoteAction(String name, String keys, boolean opensGroup, BooleanSupplier possible, Runnable run) {

    /** In words. */
    String words() {
        return Words.say("notes." + name);
    }

    /** What it does, for screen readers and as a hint. */
    String description() {
        return Words.say("notes." + name + ".description");
    }

    /**
     * Fills a menu; what cannot be done is told from the rest whenever it opens.
     *
     * @param first run before any of them
     */
    static void fill(JPopupMenu menu, List<NoteAction> actions, Runnable first) {
        for (NoteAction action : actions) {
            if (action.opensGroup()) {
                menu.addSeparator();
            }
            JMenuItem item = new JMenuItem(action.words());
            item.setName("notes-" + action.name());
            item.setToolTipText(action.description());
            item.addActionListener(event -> {
                first.run();
                action.run().run();
            });
            menu.add(item);
            menu.addPopupMenuListener(
                    new Opening(() -> item.setEnabled(action.possible().getAsBoolean())));
        }
    }

    /** Runs something before a menu opens. */
    private record Opening(Runnable before) implements PopupMenuListener {
        @Override
        public void popupMenuWillBecomeVisible(PopupMenuEvent event) {
            before.run();
        }

        @Override
        public void popupMenuWillBecomeInvisible(PopupMenuEvent event) {}

        @Override
        public void popupMenuCanceled(PopupMenuEvent event) {}
    }
}
