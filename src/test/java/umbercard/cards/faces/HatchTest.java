package umbercard.cards.faces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import umbercard.geometry.Point;
import umbercard.model.ColorNote.Direction;

class HatchTest {
    private static final Box BOX = new Box(10, 20, 6, 3);

    private static double dx(List<Point> stroke) {
        return stroke.get(stroke.size() - 1).x() - stroke.get(0).x();
    }

    private static double dy(List<Point> stroke) {
        return stroke.get(stroke.size() - 1).y() - stroke.get(0).y();
    }

    @ParameterizedTest
    @EnumSource(Direction.class)
    void strokesStayInTheirBox(Direction direction) {
        assertThat(Hatch.strokes(direction, BOX))
                .hasSizeGreaterThan(1)
                .allSatisfy(stroke -> assertThat(stroke).allSatisfy(point -> {
                    assertThat(point.x()).isBetween(10 - 1e-9, 16 + 1e-9);
                    assertThat(point.y()).isBetween(20 - 1e-9, 23 + 1e-9);
                }));
    }

    @Test
    void flatStrokesAreLevel() {
        assertThat(Hatch.strokes(Direction.FLAT, BOX))
                .allSatisfy(s -> assertThat(dy(s)).isZero());
    }

    @Test
    void uprightStrokesStandUp() {
        assertThat(Hatch.strokes(Direction.UPRIGHT, BOX))
                .allSatisfy(s -> assertThat(dx(s)).isZero());
    }

    @Test
    void slantingStrokesLeanTheirWayGoingUp() {
        assertThat(Hatch.strokes(Direction.SLANT_RIGHT, BOX)).allSatisfy(s -> {
            assertThat(dx(s)).isPositive();
            assertThat(dy(s)).isNegative();
        });
        assertThat(Hatch.strokes(Direction.SLANT_LEFT, BOX))
                .allSatisfy(s -> assertThat(dx(s)).isNegative());
    }

    @Test
    void strokesAlongTheFormAreArchedAndEven() {
        assertThat(Hatch.strokes(Direction.ALONG_FORM, BOX)).allSatisfy(s -> {
            double top = s.stream().mapToDouble(Point::y).min().orElseThrow();
            assertThat(top).isLessThan(s.get(0).y() - 1);
            assertThat(dy(s)).isEqualTo(0, within(1e-9));
        });
    }
}
