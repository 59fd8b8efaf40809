package umbercard.notes;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import umbercard.model.Zone;
import umbercard.words.Words;

/** What a color note is for, in the trade's words; a painter may use any other word instead. */
public final class Purposes {
    public static final String BLOCK_IN = "block-in";
    public static final String DARKS = "darks";
    public static final String LAND_EDGE = "land-edge";
    public static final String SKY = "sky";
    public static final String GROUND = "ground";
    public static final String GROWTH = "growth";
    public static final String SKY_HOLES = "sky-holes";
    public static final String REFLECTIONS = "reflections";
    public static final String WATER = "water";
    public static final String RESTATED_GROWTH = "restated-growth";
    public static final String LIGHTS = "lights";
    public static final String ACCENTS = "accents";

    /** The keys of the trade's purposes, roughly in the order of application (common practice, no source). */
    public static final List<String> KEYS = List.of(
            BLOCK_IN,
            DARKS,
            LAND_EDGE,
            SKY,
            GROUND,
            GROWTH,
            SKY_HOLES,
            REFLECTIONS,
            WATER,
            RESTATED_GROWTH,
            LIGHTS,
            ACCENTS);

    /** Those whose notes count in no zone's mean: they are too few strokes to make it lighter or darker. */
    private static final Set<String> APART = Set.of(SKY_HOLES, LIGHTS, ACCENTS);

    private Purposes() {}

    /** Whether notes of that purpose count in the mean value of their zone. */
    public static boolean counts(String purpose) {
        return !APART.contains(purpose);
    }

    /** What a stick is most likely for in a zone: its darks where it is dark, else what its plane asks for. */
    public static String usual(Zone zone, boolean dark) {
        return switch (zone.plane()) {
            case SKY -> SKY;
            case WATER -> WATER;
            case FLAT, SLOPE -> dark ? DARKS : GROUND;
            case UPRIGHT -> dark ? DARKS : GROWTH;
        };
    }

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
