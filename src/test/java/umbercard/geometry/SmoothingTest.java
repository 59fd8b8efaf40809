package umbercard.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class SmoothingTest {
    @Property(seed = "1", tries = 20)
    void noPlaceLeavesItsPixelAndTheEndsStay(@ForAll long seed) {
        Random random = new Random(seed);
        List<Point> raw = HandStrokes.onPixels(HandStrokes.across(random, 300 * random.nextDouble(), 400));

        List<Point> smooth = Smoothing.open(raw, .5);

        assertThat(smooth).hasSameSizeAs(raw);
        assertThat(smooth.get(0)).isEqualTo(raw.get(0));
        assertThat(smooth.get(raw.size() - 1)).isEqualTo(raw.get(raw.size() - 1));
        for (int i = 0; i < raw.size(); i++) {
            assertThat(RunFit.distanceToSquare(smooth.get(i), raw.get(i), .5)).isLessThan(1e-12);
        }
    }

    @Property(seed = "2", tries = 20)
    void aClosedLineIsSmoothedRoundItsSeamToo(@ForAll long seed) {
        List<Point> raw = new ArrayList<>(HandStrokes.onPixels(HandStrokes.round(new Random(seed), 100, 300)));
        raw.add(raw.get(0));

        List<Point> smooth = Smoothing.closed(raw, .5);

        assertThat(smooth).hasSameSizeAs(raw);
        assertThat(smooth.get(0)).isEqualTo(smooth.get(raw.size() - 1));
        assertThat(RunFit.distanceToSquare(smooth.get(0), raw.get(0), .5)).isLessThan(1e-12);
    }

    /** Places on a parabola are on it already. */
    @Test
    void aParabolaStays() {
        List<Point> raw = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            raw.add(new Point(3 * i, .02 * i * i - i));
        }

        List<Point> smooth = Smoothing.open(raw, .5);

        for (int i = 0; i < raw.size(); i++) {
            assertThat(smooth.get(i).distance(raw.get(i))).isLessThan(1e-9);
        }
    }

    @Test
    void withoutGrainAndOfFewPlacesNothingChanges() {
        List<Point> few = List.of(new Point(0, 0), new Point(1, 0), new Point(2, 1), new Point(3, 1));

        assertThat(Smoothing.open(few, .5)).isEqualTo(few);
        assertThat(Smoothing.open(few, 0)).isSameAs(few);
    }
}
