package umbercard.notes;

import java.util.List;
import umbercard.words.Message;

/** Puts messages together. */
final class Sayings {
    private Sayings() {}

    /** One after the other, with commas; of one or more. */
    static Message joined(List<Message> messages) {
        return messages.stream()
                .reduce((first, next) -> Message.of("match.joined", first, next))
                .orElseThrow();
    }
}
