package umbercard.screen;

import org.junit.platform.launcher.LauncherSession;
import org.junit.platform.launcher.LauncherSessionListener;

/** Prepares the screen before any test class is loaded, and so before anything touches the toolkit. */
public final class ScreenListener implements LauncherSessionListener {
    @Override
    public void launcherSessionOpened(LauncherSession session) {
        Screen.prepare();
    }
}
