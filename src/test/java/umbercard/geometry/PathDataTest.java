package umbercard.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class PathDataTest {
    @Test
    void straightOutlinesCloseWithZ() {
        assertThat(PathData.of(Shapes.polygon(0, .62, 1.25, .5, 1, 1), 7)).isEqualTo("M0 .62L1.25 .5L1 1Z");
    }

    @Test
    void curvesNameTheirPulls() {
        Point a = new Point(0, 0);
        Point b = new Point(1, 1);
        Node first = new Node(a, new Point(-.5, .25), new Point(.5, -.125), true);
        Node second = new Node(b, new Point(1, .5), b, false);

        assertThat(PathData.of(new Path(List.of(first, second)), 7)).isEqualTo("M0 0C.5 -.125 1 .5 1 1");
        assertThat(PathData.of(new Outline(List.of(first, second)), 7))
                .isEqualTo("M0 0C.5 -.125 1 .5 1 1C1 1 -.5 .25 0 0Z");
    }

    @Test
    void outlinesFollowEachOther() {
        List<Outline> two = List.of(Shapes.polygon(0, 0, 1, 0, 0, 1), Shapes.polygon(5, 5, 6, 5, 5, 6));

        assertThat(PathData.of(two, 0)).isEqualTo("M0 0L1 0L0 1ZM5 5L6 5L5 6Z");
    }

    @Test
    void numbersAreShortAndPlain() {
        assertThat(PathData.of(Path.through(List.of(new Point(1e-12, -1e-12), new Point(-0.0, 1e15))), 7))
                .isEqualTo("M0 0L0 1000000000000000");
        assertThat(PathData.of(Path.through(List.of(new Point(100, 10), new Point(2.0 / 3, -.05))), 3))
                .isEqualTo("M100 10L.667 -.05");
    }

    @Test
    void nothingDrawnIsNoText() {
        assertThat(PathData.of(List.of(), 7)).isEmpty();
        assertThat(PathData.of(new Outline(List.of()), 7)).isEmpty();
        assertThat(PathData.of(new Path(List.of()), 7)).isEmpty();
        assertThat(PathData.of(Shapes.polygon(1, 2), 7)).isEqualTo("M1 2Z");
    }

    @Test
    void decimalsAreNotNegative() {
        assertThatThrownBy(() -> PathData.of(List.of(), -1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Property(seed = "3")
    void placesOnTheGridOfEditsComeBackExactly(@ForAll long seed) {
        Random random = new Random(seed);
        Outline drawn = Strokes.blob(random, 12, 2).mapped(p -> new Point(snapped(p.x()), snapped(p.y())));

        double[] read = Pattern.compile("[MLCZ ]")
                .splitAsStream(PathData.of(drawn, 7))
                .filter(number -> !number.isEmpty())
                .mapToDouble(Double::parseDouble)
                .toArray();
        double[] expected = drawn.segments().stream()
                .flatMap(segment -> List.of(segment.pullStart(), segment.pullEnd(), segment.end()).stream())
                .flatMapToDouble(point -> Arrays.stream(new double[] {point.x(), point.y()}))
                .toArray();

        assertThat(Arrays.copyOfRange(read, 2, read.length)).containsExactly(expected);
    }

    private static double snapped(double value) {
        return Math.rint(value * 1e7) / 1e7 + 0.0;
    }
}
