package umbercard.door;

import java.util.List;
import java.util.Optional;
import umbercard.model.Study;
import umbercard.words.Message;

/**
 * What an instrument shows before anything is changed.
 *
 * @param places what to draw over the card
 * @param asIf the study as it would be: shown on the card, and fed to the live readings
 * @param pointer a short hint, said on the card while it holds, if any
 */
public record Preview(List<Place> places, Optional<Study> asIf, Optional<Message> pointer) {
    public static final Preview NOTHING = new Preview(List.of(), Optional.empty(), Optional.empty());

    public Preview {
        places = List.copyOf(places);
    }
}
