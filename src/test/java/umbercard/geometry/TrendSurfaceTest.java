package umbercard.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

class TrendSurfaceTest {
    private static final List<Point> CORNERS =
            List.of(new Point(-1, -1), new Point(1, -1), new Point(1, 1), new Point(-1, 1));

    private static TrendSurface of(List<Point> places, ToDoubleFunction<Point> height) {
        return TrendSurface.of(places, places.stream().mapToDouble(height).toArray());
    }

    @Test
    void oneSampleGivesALevel() {
        TrendSurface level = of(List.of(new Point(0.5, 0.7)), p -> 3);
        assertThat(level.at(new Point(-1, 1))).isCloseTo(3, within(1e-9));
    }

    @Test
    void twoSamplesGiveASlopeAlongTheirLineAndNoneAcross() {
        TrendSurface slope = of(List.of(new Point(-1, 0), new Point(1, 0)), Point::x);
        assertThat(slope.at(new Point(0.5, 0))).isCloseTo(0.5, within(0.01));
        assertThat(slope.at(new Point(0.5, 0.8))).isCloseTo(0.5, within(0.01));
    }

    @Test
    void samplesCloseTogetherPromiseNoSlope() {
        TrendSurface nearly = of(List.of(new Point(0, 0), new Point(0.01, 0)), p -> p.x() > 0 ? 0.1 : 0);
        assertThat(nearly.at(new Point(1, 0))).isBetween(0.0, 0.15);
    }

    @Test
    void fourCornersGiveAPlane() {
        TrendSurface plane = of(CORNERS, p -> 1 + 0.2 * p.x() - 0.1 * p.y());
        assertThat(plane.at(new Point(0.3, -0.4))).isCloseTo(1.1, within(0.001));
        assertThat(plane.at(new Point(0, 0))).isCloseTo(1, within(0.001));
    }

    @Test
    void aRingOfSamplesGivesABend() {
        List<Point> ring = new ArrayList<>(CORNERS);
        ring.addAll(List.of(new Point(0, -1), new Point(1, 0), new Point(0, 1), new Point(-1, 0)));
        TrendSurface bowl = of(ring, p -> 1 - 0.1 * (p.x() * p.x() + p.y() * p.y()));
        assertThat(bowl.at(new Point(0, 0))).isCloseTo(1, within(0.01));
    }

    @Test
    void noSampleIsADefect() {
        assertThatThrownBy(() -> TrendSurface.of(List.of(), new double[0]))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
