package umbercard.door;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import umbercard.words.Trouble;

/** What is laid out on one side of a card. A plug-in. */
public interface Face extends Ranked {
    /** Lower-case words with hyphens; also the name of its look in {@code cards/} and of the files written. */
    @Override
    String id();

    /**
     * What its look must say, no more and no less: each name with {@code Double.class} for a number, {@code Boolean.class}
     * for a switch or {@code String.class} for a word.
     */
    default Map<String, Class<?>> look() {
        return Map.of();
    }

    /**
     * Lays the study on as many card sides as it takes, in order; nothing overflows a side.
     *
     * @throws Trouble if the card is too small for the face, saying what would fit
     */
    List<Consumer<Drawing>> lay(Deck deck, Look look, Type type) throws Trouble;
}
