package umbercard.model;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Map;

/** The sticks that a painter owns, in the order they lie in the tray. */
@RecordBuilder
public record Box(String id, String name, List<Stick> sticks, Map<String, Object> more) implements BoxBuilder.With {
    public Box {
        sticks = List.copyOf(sticks);
        more = More.copyOf(more);
    }
}
