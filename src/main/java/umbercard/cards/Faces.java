package umbercard.cards;

import java.util.MissingResourceException;
import umbercard.words.Words;

/** What faces are called. */
public final class Faces {
    private Faces() {}

    /** A face's name, {@code cards.face.<id>.name}; for a face from elsewhere, the words of its id. */
    public static String name(String id) {
        try {
            return Words.say("cards.face." + id + ".name");
        } catch (MissingResourceException fromElsewhere) {
            return id.replace('-', ' ');
        }
    }
}
