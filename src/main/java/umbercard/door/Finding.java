package umbercard.door;

import java.util.List;
import umbercard.model.Keyed;
import umbercard.words.Message;

/**
 * What a reading found.
 *
 * @param figures the telling one first
 * @param sentence one that a painter can act on
 * @param places where it is, for the desk to show
 */
public record Finding(Verdict verdict, List<Figure> figures, Message sentence, List<Place> places) {
    public Finding {
        figures = List.copyOf(figures);
        places = List.copyOf(places);
    }

    /** Nothing, since the painter has not given what the reading needs. */
    public static Finding notSet(Message sentence) {
        return new Finding(Verdict.NOT_SET, List.of(), sentence, List.of());
    }

    /** How the thumbnail stands to the rule. */
    public enum Verdict implements Keyed {
        HOLDS,
        LOOK_AGAIN,
        DOES_NOT_APPLY,
        NOT_SET,
        FIGURE_ONLY
    }
}
