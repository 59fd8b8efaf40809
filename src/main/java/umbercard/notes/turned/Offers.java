package umbercard.notes.turned;

import java.util.List;
import umbercard.words.Message;

/** Color notes that could be put on the card, and what else there is to say. */
public record Offers(List<Offer> offers, List<Message> remarks) {
    public Offers {
        offers = List.copyOf(offers);
        remarks = List.copyOf(remarks);
    }
}
