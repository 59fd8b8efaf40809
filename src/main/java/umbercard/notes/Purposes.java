package umbercard.notes;

import java.util.List;
import java.util.Optional;
import umbercard.words.Words;

/** What a color note is for, in the trade's words; a painter may use any other word instead. */
public final class Purposes {
    /** The keys of the trade's purposes, roughly in the order of application (common practice, no source). */
    public static final List<String> KEYS = List.of(
            "block-in",
            "darks",
            "land-edge",
            "sky",
            "ground",
            "growth",
            "sky-holes",
            "reflections",
            "water",
            "restated-growth",
            "lights",
            "accents");

    private Purposes() {}

    /** A purpose in words: the trade's for a key, the painter's own as it is. */
    public static String words(String purpose) {
        return KEYS.contains(purpose) ? Words.say("trade.purpose." + purpose) : purpose;
    }

    /** The key for words that a painter typed, if they are the trade's; otherwise the words themselves, trimmed. */
    public static String key(String typed) {
        String words = typed.strip();
        Optional<String> key = KEYS.stream()
                .filter(k -> k.equals(words) || words(k).equalsIgnoreCase(words))
                .findFirst();
        return key.orElse(words);
    }
}
