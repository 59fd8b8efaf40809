package umbercard.door;

import java.util.Optional;
import java.util.Set;

/** A way to mend what a reading found, to be tried on a copy. A plug-in; pure, callable on any thread. */
public interface Remedy extends Ranked {
    /** The ids of the readings that it can help where they say to look again. */
    Set<String> mends();

    /**
     * The thumbnail as this remedy would have it; empty where it cannot help. What it does not name stays as it was. Polls
     * {@code trial.plan().stopped()} if it takes long, and may then return anything.
     */
    Optional<Remedied> tried(Trial trial);
}
