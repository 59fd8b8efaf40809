package umbercard.cards.faces;

import java.util.Optional;
import java.util.function.BiPredicate;
import umbercard.cards.CardSizes;
import umbercard.geometry.Size;
import umbercard.words.Message;
import umbercard.words.Trouble;

/** Says what would help when words do not fit a card: the next card that takes them, or fewer words. */
final class Room {
    private Room() {}

    /**
     * The refusal.
     *
     * @param fits whether a card takes the concept given; true for a shorter one if it is for a longer one
     */
    static Trouble refuse(Size card, String concept, BiPredicate<Size, String> fits) {
        String label = CardSizes.label(card);
        Optional<String> larger = CardSizes.larger(card).stream()
                .filter(size -> fits.test(size, concept))
                .findFirst()
                .map(CardSizes::label);
        int over = concept.length() - longest(card, concept, fits);
        if (larger.isPresent()) {
            return new Trouble(
                    over < concept.length()
                            ? Message.of("cards.room.either", label, larger.get(), over)
                            : Message.of("cards.room.larger", label, larger.get()));
        }
        return new Trouble(
                over < concept.length()
                        ? Message.of("cards.room.shorter", label, over)
                        : Message.of("cards.room.none", label));
    }

    /** How many of the concept's characters the card takes, by halving. */
    private static int longest(Size card, String concept, BiPredicate<Size, String> fits) {
        int takes = 0;
        int refuses = concept.length() + 1;
        while (refuses - takes > 1) {
            int middle = (takes + refuses) / 2;
            if (fits.test(card, concept.substring(0, middle))) {
                takes = middle;
            } else {
                refuses = middle;
            }
        }
        return takes;
    }
}
