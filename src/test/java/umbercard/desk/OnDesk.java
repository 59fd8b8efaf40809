package umbercard.desk;

import umbercard.desk.theme.Theme;
import umbercard.screen.OnScreen;

/** What the tests of the desk's panels share. */
public abstract class OnDesk extends OnScreen {
    /** Does something on the event thread and waits for what comes of it. */
    protected final void act(Runnable action) {
        ask(() -> {
            action.run();
            return true;
        });
        robot().waitForIdle();
    }

    /** Keeps a picture in the light and one in the dark theme; the light one stays on. */
    protected final void shots(String name) {
        dress(false);
        shot(name + "-light");
        dress(true);
        shot(name + "-dark");
        dress(false);
    }

    /** The window in memory is erased when its background changes: it is painted once more. */
    private void dress(boolean dark) {
        act(() -> Theme.install(dark));
        act(() -> window().target().repaint());
    }
}
