package umbercard.words;

import java.util.List;

/**
 * Something to be said: a key and what goes into it. The core returns messages and builds no sentence; {@link Words}
 * turns one into words. The part of the key before its first dot names the bundle.
 */
public record Message(String key, List<Object> arguments) {
    public Message {
        arguments = List.copyOf(arguments);
    }

    public static Message of(String key, Object... arguments) {
        return new Message(key, List.of(arguments));
    }
}
