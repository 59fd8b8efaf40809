package umbercard.remedies;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import umbercard.geometry.Outline;
import umbercard.geometry.Warp;
import umbercard.model.Level;
import umbercard.model.Thumbnail;
import umbercard.model.edit.Edits;

/** A thumbnail on which one line is moved and all else with it: marks, lines, focus, eye path, and where the zones lie. */
final class Warped {
    private final Level from;
    private final Level to;
    private final double ratio;
    private final Warp warp;

    Warped(Level from, Level to, double ratio) {
        this.from = from;
        this.to = to;
        this.ratio = ratio;
        warp = Warp.between(from.across(ratio), to.across(ratio), ratio);
    }

    Thumbnail of(Thumbnail thumbnail) {
        Map<String, List<Outline>> areas = new TreeMap<>();
        thumbnail
                .zoneAreas()
                .forEach((zone, outlines) ->
                        areas.put(zone, outlines.stream().map(this::moved).toList()));
        return thumbnail
                .withMarks(thumbnail.marks().stream()
                        .map(mark -> mark.withOutline(moved(mark.outline())))
                        .toList())
                .withHorizon(moved(thumbnail.horizon()))
                .withLandEdge(moved(thumbnail.landEdge()))
                .withWaterline(moved(thumbnail.waterline()))
                .withFocus(thumbnail.focus().map(warp::mapped))
                .withEyePath(thumbnail.eyePath().map(warp::mapped))
                .withZoneAreas(areas);
    }

    private Outline moved(Outline outline) {
        return Edits.snapped(warp.mapped(outline));
    }

    /** Another line that crosses the moved one would break; it keeps its ends. */
    private Optional<Level> moved(Optional<Level> level) {
        return level.map(line -> line.equals(from) ? to : Level.along(warp.mapped(line.across(ratio)), ratio));
    }
}
