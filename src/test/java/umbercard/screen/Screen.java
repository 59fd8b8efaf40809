package umbercard.screen;

import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;

/** Which screen this run of the tests has. */
final class Screen {
    private static final Logger LOG = Logger.getLogger(Screen.class.getName());
    private static boolean inMemory;

    private Screen() {}

    /** Installs the screen in memory where the run asks for it and this Java has what it takes. */
    static void prepare() {
        if (!"memory".equals(System.getProperty("ui.screen", ""))) {
            return;
        }
        if (Runtime.version().feature() != InMemoryScreen.JAVA_RELEASE) {
            LOG.info(
                    "The screen in memory needs Java 17; the UI tests use the machine's own display, if there is one.");
            return;
        }
        try {
            InMemoryScreen.install();
            inMemory = true;
        } catch (ReflectiveOperationException | IllegalStateException | AWTError | LinkageError failure) {
            LOG.log(Level.WARNING, "The screen in memory could not be installed.", failure);
        }
    }

    static boolean isInMemory() {
        return inMemory;
    }

    /** Why no window can be opened; empty if one can. */
    static Optional<String> missing() {
        try {
            if (GraphicsEnvironment.isHeadless()) {
                return Optional.of("there is no display");
            }
            // A display that is named but dead passes the first question and fails here.
            GraphicsEnvironment.getLocalGraphicsEnvironment().getDefaultScreenDevice();
            return Optional.empty();
        } catch (AWTError | HeadlessException | LinkageError failure) {
            return Optional.of("the display does not answer");
        }
    }
}
