package umbercard.cards.faces;

import java.util.List;
import umbercard.geometry.Point;
import umbercard.geometry.Size;
import umbercard.model.Stick;

/**
 * Where one color note's stick is rubbed on its printed card, and what is printed or left bare beside it; millimeters from
 * the card's upper left corner.
 *
 * @param note the note's place in the study, from 0
 * @param patch the white part of the patch
 * @param gray the printed gray at its right, of Munsell value 5, which may be rubbed over
 * @param bare pieces of bare card at the same height
 */
public record RubbedStrip(int note, Stick stick, Part patch, Part gray, List<Part> bare) {
    /** The Munsell value of the printed gray. */
    public static final double GRAY = 5;

    public RubbedStrip {
        bare = List.copyOf(bare);
    }

    /**
     * An upright rectangle on the card.
     *
     * @param corner the upper left one
     */
    public record Part(Point corner, Size size) {
        static Part of(Box box) {
            return new Part(box.corner(), box.size());
        }
    }
}
