package umbercard.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import umbercard.door.Finding;
import umbercard.door.Place;
import umbercard.door.Reading;
import umbercard.geometry.Outline;
import umbercard.geometry.Path;
import umbercard.geometry.Point;
import umbercard.model.Level;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;
import umbercard.model.Thumbnail.Ground;
import umbercard.words.Words;

/**
 * Thumbnails told in a line, and what is to be read of them. Numbers are hundredths of the frame's height, {@code R} its right side
 * at 133.33; parts are set apart by semicolons: a rectangle by two corners or a polygon by more, which are laid, or {@code lift} or
 * {@code hide} before it; {@code dark} for the ground; {@code focus}, {@code path}, {@code horizon} and {@code land}.
 */
public final class Drawn {
    /** Of a figure: the grid of regions is 1e-9, and printed numbers have five places. */
    private static final double EXACT = 1e-5;

    private Drawn() {}

    public static Thumbnail thumbnail(String drawing) {
        Thumbnail drawn = Plans.blank();
        for (String part : drawing.split(";")) {
            drawn = with(drawn, part.trim());
        }
        return drawn;
    }

    private static Thumbnail with(Thumbnail drawn, String part) {
        String word = part.replaceAll("[^a-z]", "");
        List<Point> points = points(part.replaceAll("[a-z]", "").trim());
        return switch (word) {
            case "dark" -> drawn.withGround(Ground.DARK);
            case "focus" -> drawn.withFocus(Optional.of(points.get(0)));
            case "path" -> drawn.withEyePath(Optional.of(Path.through(points)));
            case "horizon" -> drawn.withHorizon(Optional.of(level(part)));
            case "land" -> drawn.withLandEdge(Optional.of(level(part)));
            default -> points.isEmpty() ? drawn : marked(drawn, word, points);
        };
    }

    private static Level level(String part) {
        return Level.at(Double.parseDouble(part.split(" ")[1]) / 100);
    }

    private static Thumbnail marked(Thumbnail drawn, String word, List<Point> points) {
        List<Mark> marks = new ArrayList<>(drawn.marks());
        Point one = points.get(0);
        Point two = points.get(1);
        Outline outline =
                points.size() == 2 ? Outline.rectangle(one.x(), one.y(), two.x(), two.y()) : Outline.polygon(points);
        Mark.Kind kind = word.equals("lift") ? Mark.Kind.LIFT : Mark.Kind.LAY;
        marks.add(new Mark("m" + (marks.size() + 1), kind, outline).withHidden(word.equals("hide")));
        return drawn.withMarks(marks);
    }

    private static List<Point> points(String numbers) {
        double[] all = Arrays.stream(numbers.split(" +"))
                .filter(number -> !number.isEmpty())
                .mapToDouble(number -> number.equals("R") ? Plans.RATIO : Double.parseDouble(number) / 100)
                .toArray();
        return IntStream.range(0, all.length / 2)
                .mapToObj(i -> new Point(all[2 * i], all[2 * i + 1]))
                .toList();
    }

    /**
     * Reads a drawing and compares.
     *
     * @param limits own ones, as {@code name=value} set apart by blanks, or none
     * @param figures some of them, as {@code name=value} set apart by blanks; none at all where there are to be none
     * @param places as {@code at x y}, {@code between x y x y}, {@code along x y x y} from end to end, {@code over percent}
     */
    public static void check(
            Reading reading,
            String drawing,
            String limits,
            String verdict,
            String figures,
            String sentence,
            String places) {
        Map<String, Double> own = numbers(limits);
        Finding finding = Plans.read(reading, Plans.study().withLimits(Map.of(reading.id(), own)), thumbnail(drawing));

        assertThat(Words.say(finding.sentence())).isEqualTo(sentence);
        assertThat(finding.verdict().key()).isEqualTo(verdict);
        Map<String, Double> expected = numbers(figures);
        assertThat(finding.figures().isEmpty()).as("no figures").isEqualTo(expected.isEmpty());
        expected.forEach((name, value) ->
                assertThat(Plans.figure(finding, name)).as(name).isEqualTo(value, within(EXACT)));
        assertThat(finding.places().stream().map(Drawn::told).collect(Collectors.joining("; ")))
                .isEqualTo(Optional.ofNullable(places).orElse(""));
    }

    private static Map<String, Double> numbers(String text) {
        Map<String, Double> numbers = new HashMap<>();
        for (String pair : Optional.ofNullable(text).orElse("").split(" ")) {
            if (!pair.isEmpty()) {
                String[] sides = pair.split("=");
                numbers.put(sides[0], Double.valueOf(sides[1]));
            }
        }
        return numbers;
    }

    private static String told(Place place) {
        if (place instanceof Place.At at) {
            return "at " + told(at.point());
        }
        if (place instanceof Place.Between between) {
            return "between " + told(between.from()) + " " + told(between.to());
        }
        if (place instanceof Place.Along along) {
            List<Point> line = along.line();
            return "along " + told(line.get(0)) + " " + told(line.get(line.size() - 1));
        }
        if (place instanceof Place.Over over) {
            return String.format(Locale.ROOT, "over %.1f", 100 * over.region().area() / Plans.RATIO);
        }
        throw new AssertionError("no place in a drawing: " + place);
    }

    private static String told(Point point) {
        return String.format(Locale.ROOT, "%.0f %.0f", 100 * point.x(), 100 * point.y());
    }
}
