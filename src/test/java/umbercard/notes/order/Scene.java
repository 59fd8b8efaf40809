package umbercard.notes.order;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import umbercard.color.Lab;
import umbercard.color.MunsellValue;
import umbercard.geometry.Outline;
import umbercard.model.ColorNote;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Surface;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;
import umbercard.zones.ZoneMap;

/**
 * A small landscape and notes for it, written as {@code name:purpose@zone/value}, then letters: {@code h} hard, {@code s} soft,
 * {@code c} bright, {@code l} second layer, {@code p} pinned, {@code |} a new session begins with it. Without a zone
 * {@code name:purpose@-/5}. From the top: high sky, low sky, ridge, trees over ridge and slope, slope, bank, pond.
 */
final class Scene {
    private static final Pattern NOTE = Pattern.compile("(\\w+):([\\w-]*)@(\\w+|-)/([\\d.]+)([hsclp|]*)");
    private static final Surface SURFACE = new Surface(12, 9, Surface.Unit.IN, 0, Optional.empty(), true);

    private static final Thumbnail THUMBNAIL = Thumbnail.empty("t1", "scene")
            .withZoneAreas(Map.of(
                    "high", band(0, 0.2),
                    "low", band(0.2, 0.4),
                    "ridge", band(0.4, 0.5),
                    "slope", band(0.5, 0.7),
                    "trees", List.of(Outline.rectangle(0.2, 0.3, 0.6, 0.65)),
                    "bank", band(0.7, 0.8),
                    "pond", band(0.8, 1)));

    private static final List<Zone> ZONES = List.of(
            new Zone("high", "high sky", Zone.Plane.SKY, Zone.Distance.MIDDLE),
            new Zone("low", "low sky", Zone.Plane.SKY, Zone.Distance.FAR),
            new Zone("ridge", "ridge", Zone.Plane.SLOPE, Zone.Distance.FAR),
            new Zone("slope", "slope", Zone.Plane.SLOPE, Zone.Distance.MIDDLE),
            new Zone("trees", "trees", Zone.Plane.UPRIGHT, Zone.Distance.MIDDLE),
            new Zone("bank", "bank", Zone.Plane.FLAT, Zone.Distance.NEAR),
            new Zone("pond", "pond", Zone.Plane.WATER, Zone.Distance.NEAR));

    private Scene() {}

    private static List<Outline> band(double top, double bottom) {
        return List.of(Outline.rectangle(0, top, 2, bottom));
    }

    static Study of(List<ColorNote> notes) {
        return Study.begin("scene", SURFACE)
                .withThumbnails(List.of(THUMBNAIL))
                .withZones(ZONES)
                .withNotes(notes);
    }

    static ZoneMap map(Study study) {
        return ZoneMap.of(study, THUMBNAIL);
    }

    static Arranged arranged(Study study) {
        return Arranging.of(study, map(study));
    }

    static Study of(String card) {
        return of(Arrays.stream(card.strip().split("\\s+")).map(Scene::note).toList());
    }

    static ColorNote note(String text) {
        Matcher matcher = NOTE.matcher(text);
        if (!matcher.matches()) {
            throw new IllegalArgumentException("no note: " + text);
        }
        String marks = matcher.group(5);
        double lightness = Lab.lightness(MunsellValue.luminance(Double.parseDouble(matcher.group(4))));
        Stick stick = new Stick(
                        "s-" + matcher.group(1),
                        matcher.group(1),
                        new Stick.Slot(1, 1),
                        new Lab(lightness, marks.contains("c") ? 40 : 0, 0))
                .withHardness(hardness(marks));
        return ColorNote.of(matcher.group(1), stick)
                .withPurpose(matcher.group(2))
                .withZone(Optional.of(matcher.group(3)).filter(zone -> !zone.equals("-")))
                .withLayer(marks.contains("l") ? 2 : 1)
                .withPinned(marks.contains("p"))
                .withBreakBefore(marks.contains("|"));
    }

    private static Optional<Stick.Hardness> hardness(String marks) {
        if (marks.contains("h")) {
            return Optional.of(Stick.Hardness.HARD);
        }
        return marks.contains("s") ? Optional.of(Stick.Hardness.SOFT) : Optional.empty();
    }

    /** The notes' names, with a bar before each that begins a session. */
    static String card(List<ColorNote> notes) {
        return notes.stream()
                .map(note -> (note.breakBefore() ? "|" : "") + note.id())
                .collect(Collectors.joining(" "));
    }

    /** The same notes in another order, breaks left where they are. */
    static Study shuffled(Study study, List<Integer> order) {
        List<ColorNote> notes = new ArrayList<>();
        for (int place = 0; place < order.size(); place++) {
            notes.add(study.notes()
                    .get(order.get(place))
                    .withBreakBefore(study.notes().get(place).breakBefore()));
        }
        return study.withNotes(notes);
    }

    static Map<String, Integer> places(List<ColorNote> notes) {
        Map<String, Integer> places = new TreeMap<>();
        notes.forEach(note -> places.put(note.id(), places.size()));
        return places;
    }
}
