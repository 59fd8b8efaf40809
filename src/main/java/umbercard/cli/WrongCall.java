package umbercard.cli;

import umbercard.words.Message;
import umbercard.words.Words;

/** A call that cannot be meant, found out after its parts were read one by one: exit code 2. */
final class WrongCall extends RuntimeException {
    private static final long serialVersionUID = 1;

    WrongCall(Message said) {
        super(Words.say(said));
    }
}
