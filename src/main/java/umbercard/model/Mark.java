package umbercard.model;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Map;
import umbercard.geometry.Outline;

/** One closed outline that lays dark or lifts light; a hidden one does neither. */
@RecordBuilder
public record Mark(String id, Kind kind, Outline outline, boolean hidden, Map<String, Object> more)
        implements MarkBuilder.With {

    /** What a mark does to the card. */
    public enum Kind implements Keyed {
        LAY,
        LIFT
    }

    public Mark {
        more = More.copyOf(more);
    }

    public Mark(String id, Kind kind, Outline outline) {
        this(id, kind, outline, false, Map.of());
    }
}
