package umbercard.desk.photographed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import umbercard.geometry.Point;
import umbercard.picture.Picture;

class TrayMarksTest {
    private static final List<Point> SQUARE =
            List.of(new Point(100, 100), new Point(500, 100), new Point(500, 300), new Point(100, 300));

    private static TrayMarks marks(List<Point> corners, List<Point> whites) {
        return new TrayMarks(corners, 2, 4, whites, 9.5, new Picture(600, 400, new int[240000]));
    }

    @Test
    void thereIsNoTrayWithoutAWhite() {
        assertThat(marks(SQUARE, List.of()).tray()).isEmpty();
        assertThat(marks(SQUARE, List.of(new Point(50, 50))).tray())
                .hasValueSatisfying(tray -> assertThat(tray.grays()).hasSize(1));
    }

    /** Seen straight from above, cells are squares of 100 pixels. */
    @Test
    void linesRunBetweenTheCells() {
        List<List<Point>> lines = marks(SQUARE, List.of()).lines();
        assertThat(lines).hasSize(3 + 5);
        assertThat(lines.get(1).get(0).distance(new Point(100, 200))).isLessThan(1e-9);
        assertThat(lines.get(1).get(1).distance(new Point(500, 200))).isLessThan(1e-9);
        assertThat(lines.get(4).get(0).distance(new Point(200, 100))).isLessThan(1e-9);
    }

    @Test
    void cornersThatAreNoneDrawNoLines() {
        List<Point> crossed = List.of(SQUARE.get(0), SQUARE.get(2), SQUARE.get(1), SQUARE.get(3));
        assertThat(marks(crossed, List.of()).lines()).isEmpty();
    }
}
