package umbercard.door;

import java.util.Optional;

/**
 * What a gesture led to.
 *
 * @param preview what to show until the next gesture
 * @param edit the edit, if the gesture completed one
 * @param held whether something is half made, which Escape drops
 */
public record Step(Preview preview, Optional<Edit> edit, boolean held) {

    /** Nothing to show, nothing done, nothing half made. */
    public static Step idle() {
        return new Step(Preview.NOTHING, Optional.empty(), false);
    }

    /** Something half made, and what it looks like. */
    public static Step holding(Preview preview) {
        return new Step(preview, Optional.empty(), true);
    }

    /** A finished edit. */
    public static Step done(Edit edit) {
        return new Step(Preview.NOTHING, Optional.of(edit), false);
    }
}
