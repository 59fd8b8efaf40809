package umbercard.notes.turned;

import java.util.List;
import java.util.function.UnaryOperator;
import umbercard.model.ColorNote;
import umbercard.model.Study;
import umbercard.model.edit.Notes;
import umbercard.model.edit.Sticks;
import umbercard.words.Message;

/**
 * Notes that could go on the color card.
 *
 * @param offers in the order in which they would be laid
 * @param remarks what was left out, or what is missing for any
 */
public record Offers(List<Offer> offers, List<Message> remarks) {
    public Offers {
        offers = List.copyOf(offers);
        remarks = List.copyOf(remarks);
    }

    /** No offers, and why. */
    public static Offers none(Message remark) {
        return new Offers(List.of(), List.of(remark));
    }

    /** The notes alone. */
    public List<ColorNote> notes() {
        return offers.stream().map(Offer::note).toList();
    }

    /** Adds all of them after the notes that are there, and sets out their sticks where they are not out yet. */
    public UnaryOperator<Study> adding() {
        UnaryOperator<Study> out =
                Sticks.setOut(notes().stream().map(ColorNote::stick).toList());
        return study -> Notes.add(notes()).apply(out.apply(study));
    }
}
