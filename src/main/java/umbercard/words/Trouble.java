package umbercard.words;

import java.io.IOException;

/**
 * Something went wrong that the painter can do something about: one sentence that names the file and the remedy. The
 * cause, if any, is for the log.
 */
public final class Trouble extends IOException {
    private final transient Message said;

    public Trouble(Message said) {
        super(Words.say(said));
        this.said = said;
    }

    public Trouble(Message said, Throwable cause) {
        super(Words.say(said), cause);
        this.said = said;
    }

    /** What to tell the painter. */
    public Message said() {
        return said;
    }
}
