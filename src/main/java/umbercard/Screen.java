package umbercard;

import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.nio.file.Path;
import java.util.Optional;
import umbercard.cli.DeskOpener;
import umbercard.desk.Desk;

/** The way to the desk, if there is a screen. */
final class Screen implements DeskOpener {
    private final boolean there = isThere();

    /** Asks for the screen itself, since a display that is named but dead shows only then. */
    private static boolean isThere() {
        try {
            return !GraphicsEnvironment.isHeadless()
                    && GraphicsEnvironment.getLocalGraphicsEnvironment().getDefaultScreenDevice() != null;
        } catch (HeadlessException | AWTError | UnsatisfiedLinkError | NoClassDefFoundError noScreen) {
            return false;
        }
    }

    @Override
    public boolean canOpen() {
        return there;
    }

    @Override
    public void open(Optional<Path> study) {
        Desk.open(study);
    }
}
