package umbercard.readings.placement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import umbercard.door.Finding;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.model.Mark;
import umbercard.readings.Drawn;
import umbercard.readings.Plans;

class BalanceTest {
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "balance.csv", numLinesToSkip = 1, delimiter = '|')
    void readsWhatIsDrawn(
            String name,
            String drawing,
            String limits,
            String verdict,
            String figures,
            String sentence,
            String places) {
        Drawn.check(new Balance(), drawing == null ? "" : drawing, limits, verdict, figures, sentence, places);
    }

    /** Shapes a tenth of their published size, moved to where they lie within the frame; areas are held to a grid of 1e-9. */
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "balance_shapes.csv", numLinesToSkip = 1)
    void knownShapesHaveTheirPublishedMiddleAndSpread(
            String shape, String corners, double area, double cx, double cy, double ix, double iy) {
        String[] xy = corners.split(" ");
        List<Point> points = IntStream.range(0, xy.length / 2)
                .mapToObj(i -> new Point(
                        0.3 + Double.parseDouble(xy[2 * i]) / 10, 0.2 + Double.parseDouble(xy[2 * i + 1]) / 10))
                .toList();
        Mark mark = new Mark("m1", Mark.Kind.LAY, Outline.polygon(points));

        Finding finding = Plans.read(new Balance(), Plans.blank().withMarks(List.of(mark)));

        double half = Plans.RATIO / 2;
        assertThat(Plans.figure(finding, "across")).isEqualTo((0.3 + cx / 10 - half) / half, within(1e-7));
        assertThat(Plans.figure(finding, "down")).isEqualTo((0.2 + cy / 10 - 0.5) / 0.5, within(1e-7));
        assertThat(Plans.figure(finding, "spread-across")).isEqualTo(Math.sqrt(iy / area) / 10 / half, within(1e-7));
        assertThat(Plans.figure(finding, "spread-down")).isEqualTo(Math.sqrt(ix / area) / 10 / 0.5, within(1e-7));
    }
}
