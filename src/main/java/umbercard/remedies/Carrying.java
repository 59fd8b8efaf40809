package umbercard.remedies;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import umbercard.geometry.Outline;
import umbercard.geometry.Path;
import umbercard.geometry.Point;
import umbercard.model.Level;
import umbercard.model.Thumbnail;
import umbercard.model.edit.Edits;

/** How everything on a card is carried elsewhere: marks, lines, focus, eye path, and where the zones lie. */
record Carrying(
        UnaryOperator<Outline> outline,
        UnaryOperator<Level> level,
        UnaryOperator<Point> point,
        UnaryOperator<Path> path) {

    Thumbnail of(Thumbnail thumbnail) {
        Map<String, List<Outline>> areas = new TreeMap<>();
        thumbnail
                .zoneAreas()
                .forEach((zone, outlines) ->
                        areas.put(zone, outlines.stream().map(this::carried).toList()));
        return thumbnail
                .withMarks(thumbnail.marks().stream()
                        .map(mark -> mark.withOutline(carried(mark.outline())))
                        .toList())
                .withHorizon(thumbnail.horizon().map(level))
                .withLandEdge(thumbnail.landEdge().map(level))
                .withWaterline(thumbnail.waterline().map(level))
                .withFocus(thumbnail.focus().map(point))
                .withEyePath(thumbnail.eyePath().map(path))
                .withZoneAreas(areas);
    }

    private Outline carried(Outline drawn) {
        return Edits.snapped(outline.apply(drawn));
    }
}
