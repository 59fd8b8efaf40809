package umbercard.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import umbercard.color.ValueScale;
import umbercard.door.Figure;
import umbercard.door.Finding;
import umbercard.door.Place;
import umbercard.geometry.Node;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.words.Words;

/**
 * Readings as one JSON object with stable keys, for scripts; values are Munsell's, however the painter numbers them. Places are in frame units (the frame's height is 1), points as
 * {@code [x, y]}, y down: {@code at} a point, {@code between} two, {@code along} a line, {@code over} outlines, or {@code of}
 * zones and notes by id.
 */
final class ReadingsJson {
    private ReadingsJson() {}

    static String of(ReadingsReport report) {
        return JsonText.of(json(report));
    }

    /** An array of such objects, in the order of the thumbnails. */
    static String of(List<ReadingsReport> reports) {
        return JsonText.of(reports.stream().map(ReadingsJson::json).toList());
    }

    private static Map<String, Object> json(ReadingsReport report) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("study", report.study().title());
        json.put("thumbnail", report.thumbnail().name());
        json.put(
                "readings",
                report.lines().stream().map(line -> reading(report, line)).toList());
        return json;
    }

    private static Map<String, Object> reading(ReadingsReport report, ReadingsReport.Line line) {
        Finding finding = line.finding();
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", line.rule().id());
        json.put("verdict", finding.verdict().key());
        json.put("figures", finding.figures().stream().map(ReadingsJson::figure).toList());
        json.put("sentence", Words.say(finding.sentence(), ValueScale.MUNSELL));
        json.put("rule", report.ruleInWords(line.rule(), ValueScale.MUNSELL));
        json.put("source", line.rule().source());
        json.put("places", finding.places().stream().map(ReadingsJson::place).toList());
        return json;
    }

    private static Map<String, Object> figure(Figure figure) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("name", figure.name());
        json.put("value", figure.value());
        json.put("unit", figure.unit());
        return json;
    }

    private static Map<String, Object> place(Place place) {
        if (place instanceof Place.At at) {
            return Map.of("at", point(at.point()));
        } else if (place instanceof Place.Between between) {
            return Map.of("between", List.of(point(between.from()), point(between.to())));
        } else if (place instanceof Place.Along along) {
            return Map.of(
                    "along", along.line().stream().map(ReadingsJson::point).toList());
        } else if (place instanceof Place.Over over) {
            return Map.of(
                    "over",
                    over.region().outlines().stream().map(ReadingsJson::outline).toList());
        }
        Place.Of of = (Place.Of) place;
        Map<String, Object> names = new LinkedHashMap<>();
        names.put("zones", of.zones());
        names.put("notes", of.notes());
        return Map.of("of", names);
    }

    private static List<List<Double>> outline(Outline outline) {
        return outline.nodes().stream().map(Node::at).map(ReadingsJson::point).toList();
    }

    private static List<Double> point(Point point) {
        return List.of(point.x(), point.y());
    }
}
