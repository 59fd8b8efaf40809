package umbercard.model;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Map;
import java.util.Optional;

/**
 * One strip on the color card. Its place in the study's list is its place in the order of application.
 *
 * @param stick a copy, since the box may change
 * @param zone the id of the zone it goes into, if one is chosen
 * @param purpose a key of the trade's list (see {@code notes.Purposes}) or the painter's own word; empty for none
 * @param layer counted from 1
 * @param words whatever the painter wants to remember
 * @param pinned whether arranging leaves it where it is
 * @param breakBefore whether a new session begins with it
 */
@RecordBuilder
public record ColorNote(
        String id,
        Stick stick,
        Optional<String> zone,
        String purpose,
        Direction direction,
        Touch touch,
        int layer,
        String words,
        boolean pinned,
        boolean breakBefore,
        Map<String, Object> more)
        implements ColorNoteBuilder.With {

    /** Which way the strokes run. */
    public enum Direction implements Keyed {
        FLAT,
        UPRIGHT,
        SLANT_LEFT,
        SLANT_RIGHT,
        ALONG_FORM
    }

    /** How the stick is pressed. */
    public enum Touch implements Keyed {
        LIGHT,
        FIRM
    }

    public ColorNote {
        if (layer < 1) {
            throw new IllegalArgumentException("layers are counted from 1: " + layer);
        }
        more = More.copyOf(more);
    }

    /** A new strip of the stick: no zone, no purpose, flat, firm, first layer. */
    public static ColorNote of(String id, Stick stick) {
        return new ColorNote(
                id, stick, Optional.empty(), "", Direction.FLAT, Touch.FIRM, 1, "", false, false, Map.of());
    }
}
