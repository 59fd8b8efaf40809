package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import umbercard.geometry.Node;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.geometry.Region;

class OverrunTest {
    private static final double RATIO = 1.25;
    private static final double OUT = Overrun.WIDTH;

    @Test
    void movesTheStretchAlongTheFrameOutAndKeepsWhereItMeetsTheFrame() {
        Outline land = Outline.polygon(List.of(
                new Point(0, 0.6), new Point(0.5, 0.4), new Point(RATIO, 0.7), new Point(RATIO, 1), new Point(0, 1)));
        assertThat(Overrun.of(land, RATIO).nodes())
                .extracting(Node::at)
                .containsExactly(
                        new Point(-OUT, 0.6),
                        new Point(0, 0.6),
                        new Point(0.5, 0.4),
                        new Point(RATIO, 0.7),
                        new Point(RATIO + OUT, 0.7),
                        new Point(RATIO + OUT, 1 + OUT),
                        new Point(-OUT, 1 + OUT));
    }

    @Test
    void changesNothingWithinTheFrame() {
        Outline corner = new Outline(List.of(
                Node.sharp(0.3, 0),
                new Node(new Point(0, 0.4), new Point(0.2, 0.4), new Point(0, 0.4), false),
                Node.sharp(0, 0)));
        Region beyond = Region.of(Overrun.of(corner, RATIO)).intersect(Region.rectangle(0, 0, RATIO, 1));
        assertThat(beyond.area()).isCloseTo(Region.of(corner).area(), within(1e-7));
        assertThat(Region.of(Overrun.of(corner, RATIO)).area()).isGreaterThan(beyond.area() + 0.5 * OUT);
    }

    @Test
    void leavesAnOutlineInsideAsItIs() {
        Outline inside = Outline.rectangle(0.2, 0.2, 0.6, 0.5);
        assertThat(Overrun.of(inside, RATIO)).isEqualTo(inside);
    }
}
