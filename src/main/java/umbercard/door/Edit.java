package umbercard.door;

import java.util.Optional;
import java.util.function.UnaryOperator;
import umbercard.model.Study;
import umbercard.words.Message;

/**
 * A change of the study, by name.
 *
 * @param name what the menu calls it after "Undo"
 * @param joinsWith edits in a row with the same key are one step of undo
 */
public record Edit(Message name, UnaryOperator<Study> change, Optional<String> joinsWith) {
    public Edit(Message name, UnaryOperator<Study> change) {
        this(name, change, Optional.empty());
    }
}
