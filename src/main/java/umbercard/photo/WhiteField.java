package umbercard.photo;

import java.util.ArrayList;
import java.util.List;
import umbercard.color.Lab;
import umbercard.geometry.Point;
import umbercard.geometry.Size;
import umbercard.geometry.TrendSurface;

/**
 * What a surface that throws all light back would look like, place by place on a flat thing: told from whites or grays of
 * known lightness, and smooth between them, so that uneven light is evened out where there is more than one.
 */
final class WhiteField {
    private final Size flat;
    private final List<TrendSurface> logs;

    private WhiteField(Size flat, List<TrendSurface> logs) {
        this.flat = flat;
        this.logs = logs;
    }

    /**
     * A neutral thing of known lightness.
     *
     * @param place on the flat thing
     * @param light its linear red, green and blue, each over 0
     * @param luminance what it throws back of all light, 0..1
     */
    record Known(Point place, List<Double> light, double luminance) {
        static Known of(Point place, double[] rgb, double luminance) {
            return new Known(place, List.of(rgb[0], rgb[1], rgb[2]), luminance);
        }
    }

    /** The field of one known thing or more. */
    static WhiteField of(Size flat, List<Known> known) {
        List<Point> places =
                known.stream().map(one -> normal(flat, one.place())).toList();
        List<TrendSurface> logs = new ArrayList<>();
        for (int k = 0; k < 3; k++) {
            int channel = k;
            double[] heights = known.stream()
                    .mapToDouble(one -> Math.log(one.light().get(channel) / one.luminance()))
                    .toArray();
            logs.add(TrendSurface.of(places, heights));
        }
        return new WhiteField(flat, logs);
    }

    private static Point normal(Size flat, Point place) {
        return new Point(2 * place.x() / flat.width() - 1, 2 * place.y() / flat.height() - 1);
    }

    /** The linear light of a surface that throws all light back. */
    double[] at(Point place) {
        Point normal = normal(flat, place);
        return logs.stream().mapToDouble(log -> Math.exp(log.at(normal))).toArray();
    }

    /** Turns linear light seen at a place into the color under D65. */
    WhiteCorrection correctionAt(Point place) {
        return new WhiteCorrection(at(place));
    }

    /** The color under D65 of linear light seen at a place. */
    Lab color(Point place, double[] rgb) {
        return correctionAt(place).color(rgb);
    }
}
