package umbercard.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiFunction;
import umbercard.geometry.Node;
import umbercard.geometry.Outline;
import umbercard.geometry.Path;
import umbercard.geometry.Point;
import umbercard.model.Frame;
import umbercard.model.Level;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;

/** A thumbnail as it stands in a study's file, and the frame, which the reference has too. */
final class ThumbnailForm {
    private ThumbnailForm() {}

    static JsonNode write(Thumbnail thumbnail) {
        Tree tree = new Tree()
                .put("id", thumbnail.id())
                .put("name", thumbnail.name())
                .put("ground", thumbnail.ground())
                .put("horizon", thumbnail.horizon(), ThumbnailForm::level)
                .put("landEdge", thumbnail.landEdge(), ThumbnailForm::level)
                .put("waterline", thumbnail.waterline(), ThumbnailForm::level)
                .put("focus", thumbnail.focus(), ThumbnailForm::point)
                .put("eyePath", thumbnail.eyePath(), path -> TextNode.valueOf(PathText.of(path)))
                .put("eyePathPoints", thumbnail.eyePath().filter(ThumbnailForm::isRound), ThumbnailForm::letters)
                .put("frame", thumbnail.frame(), ThumbnailForm::frame)
                .putList("marks", thumbnail.marks(), ThumbnailForm::mark);
        if (!thumbnail.zoneAreas().isEmpty()) {
            Tree areas = new Tree();
            thumbnail.zoneAreas().forEach((zone, outlines) -> areas.putList(zone, outlines, ThumbnailForm::area));
            tree.put("zoneAreas", areas);
        }
        return tree.rest(thumbnail.more()).node();
    }

    static Thumbnail read(Fields fields) {
        return new Thumbnail(
                fields.textOf("id"),
                fields.textOf("name"),
                fields.choice("ground", Thumbnail.Ground.class).orElse(Thumbnail.Ground.LIGHT),
                distinct(fields, "marks", fields.list("marks", ThumbnailForm::mark)),
                fields.object("horizon", ThumbnailForm::level),
                fields.object("landEdge", ThumbnailForm::level),
                fields.object("waterline", ThumbnailForm::level),
                point(fields, "focus", Range.PLACE),
                path(fields),
                fields.object("frame", ThumbnailForm::frame),
                areas(fields),
                fields.rest());
    }

    private static List<Mark> distinct(Fields fields, String name, List<Mark> marks) {
        return StudyForm.distinct(fields, name, marks, Mark::id);
    }

    private static JsonNode mark(Mark mark) {
        return outline(new Tree().put("id", mark.id()).put("kind", mark.kind()), mark.outline())
                .putIfTrue("hidden", mark.hidden())
                .rest(mark.more())
                .node();
    }

    private static Mark mark(Fields fields) {
        return new Mark(
                fields.textOf("id"),
                fields.choiceOf("kind", Mark.Kind.class),
                outline(fields),
                fields.truth("hidden", false),
                fields.rest());
    }

    private static JsonNode area(Outline outline) {
        return outline(new Tree(), outline).node();
    }

    private static Tree outline(Tree tree, Outline outline) {
        return tree.put("path", PathText.of(outline)).put("points", PathText.letters(outline.nodes()));
    }

    private static Outline outline(Fields fields) {
        return drawn(fields, "path", fields.textOf("path"), fields.text("points"), (data, letters) -> {
            Outline outline = PathText.outline(data, letters);
            checkPlaces(outline.nodes());
            return outline;
        });
    }

    private static Optional<Path> path(Fields fields) {
        Optional<String> points = fields.text("eyePathPoints");
        return fields.text("eyePath")
                .map(written -> drawn(fields, "eyePath", written, points, (data, letters) -> {
                    Path path = PathText.path(data, letters);
                    checkPlaces(path.nodes());
                    return path;
                }));
    }

    private static <T> T drawn(
            Fields fields,
            String name,
            String data,
            Optional<String> letters,
            BiFunction<String, Optional<String>, T> read) {
        try {
            return read.apply(data, letters);
        } catch (IllegalArgumentException unreadable) {
            throw fields.wrong(name, "store.wanted.path");
        }
    }

    private static void checkPlaces(List<Node> nodes) {
        for (Node node : nodes) {
            for (Point point : List.of(node.at(), node.in(), node.out())) {
                if (!Range.PLACE.has(point.x()) || !Range.PLACE.has(point.y())) {
                    throw new IllegalArgumentException("far out: " + point);
                }
            }
        }
    }

    private static boolean isRound(Path path) {
        return path.nodes().stream().anyMatch(Node::round);
    }

    private static JsonNode letters(Path path) {
        return TextNode.valueOf(PathText.letters(path.nodes()));
    }

    private static Map<String, List<Outline>> areas(Fields fields) {
        Map<String, List<Outline>> areas = new TreeMap<>();
        fields.each("zoneAreas", (zone, all) -> areas.put(zone, all.list(zone, ThumbnailForm::outline)));
        return areas;
    }

    private static JsonNode level(Level level) {
        return new Tree().put("y", level.y()).put("tilt", level.tilt()).node();
    }

    private static Level level(Fields fields) {
        return new Level(
                fields.numberOf("y", Range.PLACE),
                fields.number("tilt", Range.TILT).orElse(0));
    }

    static JsonNode frame(Frame frame) {
        return new Tree()
                .put("center", point(frame.center()))
                .put("height", frame.height())
                .put("tilt", frame.tilt())
                .put("mirrored", frame.mirrored())
                .node();
    }

    static Frame frame(Fields fields) {
        return new Frame(
                point(fields, "center", Range.PLACE).orElseGet(() -> new Point(0.5, 0.5)),
                fields.numberOf("height", Range.POSITIVE),
                fields.number("tilt", Range.ANY).orElse(0),
                fields.truth("mirrored", false));
    }

    static JsonNode point(Point point) {
        return Tree.numbers(point.x(), point.y());
    }

    static Optional<Point> point(Fields fields, String name, Range range) {
        return fields.numbers(name, range, "x", "y").map(xy -> new Point(xy[0], xy[1]));
    }
}
