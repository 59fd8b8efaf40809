package umbercard.desk.notes;

import java.awt.EventQueue;
import javax.swing.JComboBox;
import javax.swing.event.PopupMenuEvent;
import javax.swing.event.PopupMenuListener;

/**
 * Tells when a choice is made for good: a list that is open only tries out what the arrow keys pass, so that walking
 * through it makes no edits. Escape gives the choice up.
 */
final class Settled implements PopupMenuListener {
    private final JComboBox<?> combo;
    private final Runnable made;
    private final Runnable givenUp;
    private boolean canceled;

    private Settled(JComboBox<?> combo, Runnable made, Runnable givenUp) {
        this.combo = combo;
        this.made = made;
        this.givenUp = givenUp;
    }

    static void listen(JComboBox<?> combo, Runnable made, Runnable givenUp) {
        Settled settled = new Settled(combo, made, givenUp);
        combo.addPopupMenuListener(settled);
        combo.addActionListener(event -> settled.acted());
    }

    private void acted() {
        if (!combo.isPopupVisible()) {
            made.run();
        }
    }

    @Override
    public void popupMenuWillBecomeVisible(PopupMenuEvent event) {
        canceled = false;
    }

    @Override
    public void popupMenuWillBecomeInvisible(PopupMenuEvent event) {
        EventQueue.invokeLater(canceled ? givenUp : made);
    }

    @Override
    public void popupMenuCanceled(PopupMenuEvent event) {
        canceled = true;
    }
}
