package umbercard.desk;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import javax.swing.SwingUtilities;
import umbercard.desk.session.Session;
import umbercard.desk.theme.Theme;
import umbercard.door.Instrument;
import umbercard.door.Ranked;
import umbercard.kernel.Plugins;
import umbercard.model.Study;
import umbercard.model.Surface;
import umbercard.readings.Evaluation;

/** Opens the desk. */
public final class Desk {
    private Desk() {}

    /** Opens the window on the study in the file, or on Kiln Hill as an untitled copy. Returns at once. */
    public static void open(Optional<Path> study) {
        SwingUtilities.invokeLater(() -> {
            Theme.install(false);
            DeskWindow window = window();
            Thread.setDefaultUncaughtExceptionHandler((thread, failure) ->
                    SwingUtilities.invokeLater(() -> new Telling(window).failed(new ExecutionException(failure))));
            window.setVisible(true);
            study.ifPresentOrElse(window.files()::open, window.files()::showKilnHill);
        });
    }

    /** A window with nothing on it yet; on the event thread, after the theme. */
    static DeskWindow window() {
        Surface surface = new Surface(12, 9, Surface.Unit.IN, 0.25, Optional.empty(), false);
        return new DeskWindow(
                new Session(Study.begin("", surface), Optional.empty()),
                Plugins.find(Instrument.class, Ranked.ORDER),
                Evaluation.find());
    }
}
