package umbercard.model;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import umbercard.geometry.Outline;
import umbercard.geometry.Path;
import umbercard.geometry.Point;

/**
 * One two-value design over the frame: a light or dark ground, and marks in the order they were made. All places are in
 * frame units.
 *
 * @param frame its own framing of the photograph, where it differs from the reference's
 * @param zoneAreas where each zone lies on this thumbnail, by zone id: outlines filled by the non-zero rule
 */
@RecordBuilder
public record Thumbnail(
        String id,
        String name,
        Ground ground,
        List<Mark> marks,
        Optional<Level> horizon,
        Optional<Level> landEdge,
        Optional<Level> waterline,
        Optional<Point> focus,
        Optional<Path> eyePath,
        Optional<Frame> frame,
        Map<String, List<Outline>> zoneAreas,
        Map<String, Object> more)
        implements ThumbnailBuilder.With {

    /** What the card is before the first mark. */
    public enum Ground implements Keyed {
        LIGHT,
        DARK
    }

    public Thumbnail {
        marks = List.copyOf(marks);
        Map<String, List<Outline>> areas = new TreeMap<>();
        zoneAreas.forEach((zone, outlines) -> areas.put(zone, List.copyOf(outlines)));
        zoneAreas = Collections.unmodifiableMap(areas);
        more = More.copyOf(more);
    }

    /** The horizon; where none is set, the land edge; empty where neither is. */
    public Optional<Level> horizonOrLandEdge() {
        return horizon.or(() -> landEdge);
    }

    /** A light card without a mark. */
    public static Thumbnail empty(String id, String name) {
        return new Thumbnail(
                id,
                name,
                Ground.LIGHT,
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Map.of(),
                Map.of());
    }
}
