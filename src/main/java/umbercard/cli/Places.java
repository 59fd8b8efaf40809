package umbercard.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import picocli.CommandLine.TypeConversionException;
import umbercard.geometry.Point;
import umbercard.words.Words;

/** Places in a photograph as they are written in a call, in pixels from its upper left corner: {@code x,y,x,y}. */
record Places(List<Point> points) {
    /** Until a call gives some. */
    static final Places NONE = new Places(List.of());

    private static final Pattern WRITTEN = Pattern.compile("\\d{1,6}(\\.\\d{1,6})?(,\\d{1,6}(\\.\\d{1,6})?)*");

    Places {
        points = List.copyOf(points);
    }

    static Places parse(String written) {
        String[] numbers = written.split(",", -1);
        if (!WRITTEN.matcher(written).matches() || numbers.length % 2 != 0) {
            throw new TypeConversionException(Words.say("cli.wrong.places", written));
        }
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < numbers.length; i += 2) {
            points.add(new Point(Double.parseDouble(numbers[i]), Double.parseDouble(numbers[i + 1])));
        }
        return new Places(points);
    }

    /** The same places where the photograph is reduced. */
    List<Point> times(double scale) {
        return points.stream()
                .map(point -> new Point(scale * point.x(), scale * point.y()))
                .toList();
    }
}
