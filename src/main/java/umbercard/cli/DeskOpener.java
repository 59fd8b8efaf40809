package umbercard.cli;

import java.nio.file.Path;
import java.util.Optional;

/** The command line's way to the desk, handed in from outside so that neither knows the other. */
public interface DeskOpener {
    /** Whether there is a screen to open the desk on. */
    boolean canOpen();

    /** Opens the desk on the study in the file, or on Kiln Hill. Returns at once. */
    void open(Optional<Path> study);
}
