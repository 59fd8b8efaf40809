package umbercard.store;

import umbercard.words.Message;

/** A field of a file that does not hold what it should: which one, and what it should be. */
final class Wrong extends RuntimeException {
    private final transient Message reason;

    /**
     * @param place where the field stands, for example {@code thumbnails 1, marks 3, kind}
     * @param problem what is wrong with it
     */
    Wrong(String place, Message problem) {
        this(Message.of("store.wrong", place.isEmpty() ? Message.of("store.whole") : place, problem));
    }

    private Wrong(Message reason) {
        super(reason.key());
        this.reason = reason;
    }

    /** The field and what is wrong with it, in one clause. */
    Message reason() {
        return reason;
    }
}
