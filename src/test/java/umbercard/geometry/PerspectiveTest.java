package umbercard.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PerspectiveTest {
    private static final Size FLAT = new Size(6, 4);

    /** A pinhole before a tilted plane, worked out in space: nothing of the projective algebra is shared. */
    private record Pinhole(double tilt, double turn, double away) {
        Point seen(Point place) {
            double x = place.x() - FLAT.width() / 2;
            double y = place.y() - FLAT.height() / 2;
            double across = x * Math.cos(turn) - y * Math.sin(turn);
            double up = x * Math.sin(turn) + y * Math.cos(turn);
            double depth = away - up * Math.sin(tilt);
            return new Point(500 + 900 * across / depth, 400 + 900 * up * Math.cos(tilt) / depth);
        }

        List<Point> corners() {
            return List.of(
                    seen(new Point(0, 0)),
                    seen(new Point(FLAT.width(), 0)),
                    seen(new Point(FLAT.width(), FLAT.height())),
                    seen(new Point(0, FLAT.height())));
        }
    }

    @ParameterizedTest
    @CsvSource({"0, 0, 10", "0.6, 0, 10", "-0.7, 0.3, 9", "1.1, -2.8, 12", "0.4, 1.57, 8"})
    void seesEveryPlaceWhereAPinholeDoes(double tilt, double turn, double away) {
        Pinhole pinhole = new Pinhole(tilt, turn, away);
        Perspective perspective = Perspective.of(FLAT, pinhole.corners()).orElseThrow();
        Random random = new Random(5);
        for (int i = 0; i < 100; i++) {
            Point place = new Point(8 * random.nextDouble() - 1, 6 * random.nextDouble() - 1);
            Point seen = perspective.seen(place);
            assertThat(seen.distance(pinhole.seen(place))).isLessThan(1e-8);
            assertThat(perspective.place(seen).distance(place)).isLessThan(1e-8);
        }
    }

    @Test
    void theMiddleIsWhereTheDiagonalsCross() {
        List<Point> corners = List.of(new Point(0, 0), new Point(10, 0), new Point(8, 6), new Point(2, 6));
        Point middle = Perspective.of(FLAT, corners).orElseThrow().seen(new Point(3, 2));
        // y = 3x/4 from the upper left meets y = -3/4 (x - 10) from the upper right.
        assertThat(middle.x()).isCloseTo(5, within(1e-12));
        assertThat(middle.y()).isCloseTo(3.75, within(1e-12));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "crossed, 0 0 10 0 0 10 10 10",
        "counterclockwise, 0 0 0 10 10 10 10 0",
        "in a line, 0 0 5 5 10 10 20 20",
        "three in a line, 0 0 5 0 10 0 5 10",
        "inward, 0 0 10 0 3 3 0 10",
        "all the same, 1 1 1 1 1 1 1 1",
        "two the same, 0 0 10 0 10 0 0 10"
    })
    void refusesWhatNoRectangleLooksLike(String name, String numbers) {
        double[] xy = Arrays.stream(numbers.split(" "))
                .mapToDouble(Double::parseDouble)
                .toArray();
        List<Point> corners = List.of(
                new Point(xy[0], xy[1]), new Point(xy[2], xy[3]), new Point(xy[4], xy[5]), new Point(xy[6], xy[7]));
        assertThat(Perspective.of(FLAT, corners)).as(name).isEmpty();
    }

    @Test
    void threeCornersAreADefect() {
        assertThatThrownBy(() -> Perspective.of(FLAT, List.of())).isInstanceOf(IllegalArgumentException.class);
    }
}
