package umbercard.rubbed;

import java.util.List;
import umbercard.color.Lab;
import umbercard.model.Stick;
import umbercard.photo.RubbedCard.Look;

/**
 * What a rubbed card says of its sticks.
 *
 * @param sticks each once, in the order of the card's strips
 * @param graysLeftOut how many printed grays were of no use, most likely since a stick was rubbed over them
 */
public record Learned(List<OfStick> sticks, int graysLeftOut) {
    public Learned {
        sticks = List.copyOf(sticks);
    }

    /**
     * What it says of one.
     *
     * @param stick as it was known
     * @param color as it looks on the card, under D65: the median of its rubbed patches, coordinate by coordinate, of an even
     *     count the mean of the middle two; what it was where none can be trusted
     * @param look what its patches show; rubbed if one of them is
     */
    public record OfStick(Stick stick, Lab color, Look look) {
        /** Whether the card tells its color. */
        public boolean isTold() {
            return look == Look.RUBBED;
        }

        /** The same said of a stick as it is known elsewhere. */
        public OfStick of(Stick known) {
            return new OfStick(known, isTold() ? color : known.color(), look);
        }

        /** The stick with the color that the card tells. */
        public Stick now() {
            return stick.withColor(color);
        }
    }

    /** The sticks whose color the card tells. */
    public List<OfStick> told() {
        return sticks.stream().filter(OfStick::isTold).toList();
    }

    /** The sticks whose color it does not tell. */
    public List<OfStick> untold() {
        return sticks.stream().filter(stick -> !stick.isTold()).toList();
    }
}
