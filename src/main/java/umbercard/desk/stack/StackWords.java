package umbercard.desk.stack;

import java.util.Optional;
import java.util.OptionalDouble;
import umbercard.model.Level;
import umbercard.model.Thumbnail;
import umbercard.words.Words;

/** What stands on a thumbnail of the stack, in words. */
final class StackWords {
    private StackWords() {}

    /** The dark share in percent, or nothing while it is not known yet. */
    static String dark(OptionalDouble share) {
        return share.isEmpty() ? "" : Words.say("stack.dark", Long.toString(Math.round(100 * share.getAsDouble())));
    }

    /** The height of the horizon, else of the land edge, above the lower edge; nothing where neither is set. */
    static String horizon(Thumbnail thumbnail) {
        Optional<Level> level = thumbnail.horizonOrLandEdge();
        String key = thumbnail.horizon().isPresent() ? "stack.horizon" : "stack.land-edge";
        return level.map(line -> Words.say(key, 1 - line.y())).orElse("");
    }

    /** The whole card as a screen reader says it. */
    static String spoken(Thumbnail thumbnail, OptionalDouble share, boolean chosen) {
        return Words.say(
                chosen ? "stack.spoken.chosen" : "stack.spoken", thumbnail.name(), dark(share), horizon(thumbnail));
    }
}
