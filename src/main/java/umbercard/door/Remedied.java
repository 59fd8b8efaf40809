package umbercard.door;

import java.util.List;
import umbercard.model.Thumbnail;
import umbercard.words.Message;

/**
 * What a remedy makes of a thumbnail.
 *
 * @param name what is done, as an imperative
 * @param called one or two words that tell the copy from the thumbnail it was made from
 * @param thumbnail the changed thumbnail, with the id it had; marks that were added have ids that the study does not have yet
 * @param remarks what the painter should know besides
 */
public record Remedied(Message name, Message called, Thumbnail thumbnail, List<Message> remarks) {
    public Remedied {
        remarks = List.copyOf(remarks);
    }
}
