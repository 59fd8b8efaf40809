package umbercard.model;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A named area of the picture for color. Its identity belongs to the study; where it lies belongs to each thumbnail.
 *
 * @param targetValue the Munsell value it should have, 0..10, if the painter has set one
 */
@RecordBuilder
public record Zone(
        String id, String name, Plane plane, Distance distance, OptionalDouble targetValue, Map<String, Object> more)
        implements ZoneBuilder.With {

    /** How the zone lies to the light: the planes of a landscape. */
    public enum Plane implements Keyed {
        SKY,
        FLAT,
        SLOPE,
        UPRIGHT,
        WATER
    }

    /** How far off it is. */
    public enum Distance implements Keyed {
        FAR,
        MIDDLE,
        NEAR
    }

    public Zone {
        more = More.copyOf(more);
    }

    public Zone(String id, String name, Plane plane, Distance distance) {
        this(id, name, plane, distance, OptionalDouble.empty(), Map.of());
    }
}
