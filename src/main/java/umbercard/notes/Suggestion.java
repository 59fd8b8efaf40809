package umbercard.notes;

import java.util.List;
import umbercard.model.Stick;
import umbercard.picture.MainColor;
import umbercard.words.Message;

/**
 * What to set out for a study, and why.
 *
 * @param picks in the order of the box
 * @param missed what none of them covers
 * @param lacks the parts that no stick at hand can play
 * @param proven whether it is proven that no fewer sticks, or no others as many, would do as well
 * @param summary all that in a sentence
 */
public record Suggestion(List<Pick> picks, List<Missed> missed, List<Message> lacks, boolean proven, Message summary) {
    public Suggestion {
        picks = List.copyOf(picks);
        missed = List.copyOf(missed);
        lacks = List.copyOf(lacks);
    }

    /** One stick to set out, and what for. */
    public record Pick(Stick stick, Message reason) {}

    /**
     * A color of a zone that none of the picks covers.
     *
     * @param zone the zone's id
     * @param nearest the stick at hand that comes nearest
     */
    public record Missed(String zone, MainColor color, StickMatch nearest, Message said) {}
}
