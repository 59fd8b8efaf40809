package umbercard.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static umbercard.geometry.Shapes.polygon;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class CrossingsTest {
    private static final Region SQUARE = Region.rectangle(0, 0, 1, 1);
    private static final Region RING = SQUARE.minus(Region.rectangle(.25, .25, .75, .75));

    private static Crossings straight(double ax, double ay, double bx, double by, Region region) {
        return Crossings.along(new Line(new Point(ax, ay), new Point(bx, by)), region);
    }

    @Test
    void aLineChangesAtEveryEdgeOfARing() {
        Crossings crossings = straight(-1, .5, 2, .5, RING);

        assertThat(crossings.length()).isEqualTo(3);
        assertThat(crossings.changes()).extracting(Crossings.Change::inward).containsExactly(true, false, true, false);
        assertThat(crossings.changes().stream().mapToDouble(Crossings.Change::along))
                .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-14 ? 0 : 1)
                .containsExactly(1.0, 1.25, 1.75, 2.0);
        assertThat(crossings.changes().get(1).at().distance(new Point(.25, .5))).isLessThan(1e-14);
        assertThat(crossings.lengthInside()).isCloseTo(.5, within(1e-14));
    }

    @Test
    void aLineWithinStartsAndEndsInside() {
        Crossings inside = straight(.1, .1, .2, .9, RING);

        assertThat(inside.changes()).isEmpty();
        assertThat(inside.inside()).containsExactly(new Stretch(0, inside.length()));
        assertThat(straight(.3, .3, .7, .7, RING).inside()).isEmpty();
    }

    @Test
    void theBorderBelongsToTheRegion() {
        assertThat(straight(0, 0, 1, 0, SQUARE).lengthInside()).isEqualTo(1);
        assertThat(straight(.5, .25, 1, .25, RING).lengthInside()).isEqualTo(.5);
        Region slanted = Region.of(polygon(0, 0, 1, 1.0 / 3, .5, 1));
        assertThat(straight(-1, -1.0 / 3, 2, 2.0 / 3, slanted).changes()).hasSize(2);
        assertThat(straight(-1, -1.0 / 3, 2, 2.0 / 3, slanted).lengthInside())
                .isCloseTo(Math.hypot(1, 1.0 / 3), within(1e-7));
    }

    @Test
    void aLineAHairOutsideTheBorderRunsAlongIt() {
        Region slanted = Region.of(polygon(0, 0, 1, 1.0 / 3, .5, 1));
        for (double off : new double[] {-1e-9, -1e-10, 0, 1e-10, 1e-9}) {
            Crossings along = straight(-1, -1.0 / 3 + off, 2, 2.0 / 3 + off, slanted);

            assertThat(along.changes()).hasSize(2);
            assertThat(along.lengthInside()).isCloseTo(Math.hypot(1, 1.0 / 3), within(1e-7));
        }
    }

    @Test
    void aTouchIsNoChange() {
        assertThat(straight(-1, 1, 1, -1, SQUARE).changes()).isEmpty();
        Region tips = Region.rectangle(0, 0, .5, .5).union(Region.rectangle(.5, .5, 1, 1));
        assertThat(straight(0, 0, 1, 1, tips).changes()).isEmpty();
        assertThat(straight(0, 0, 1, 1, tips).lengthInside()).isCloseTo(Math.sqrt(2), within(1e-12));
        assertThat(straight(0, 1, 1, 0, tips).inside()).isEmpty();
    }

    @Test
    void theEmptyRegionAndNoPathCrossNothing() {
        assertThat(straight(0, 0, 1, 1, Region.empty()).changes()).isEmpty();
        assertThat(Crossings.along(new Path(List.of()), SQUARE)).isEqualTo(new Crossings(0, List.of(), List.of()));
        assertThat(Crossings.along(new Path(List.of(Node.sharp(.5, .5))), SQUARE)
                        .inside())
                .isEmpty();
        assertThat(straight(.5, .5, .5, .5, SQUARE).changes()).isEmpty();
    }

    /** The half circle of radius 1 about the origin meets the line x = 1/2 at ±60 degrees, 30 and 150 along. */
    @Test
    void anArcChangesWhereTheAngleSays() {
        Path arc = new Path(Shapes.arc(0, 0, 1, -Math.PI / 2, Math.PI / 2, 64));

        Crossings crossings = Crossings.along(arc, Region.rectangle(.5, -2, 2, 2));

        assertThat(crossings.length()).isCloseTo(Math.PI, within(1e-9));
        assertThat(crossings.changes()).hasSize(2);
        assertThat(crossings.changes().get(0).along()).isCloseTo(Math.PI / 6, within(1e-9));
        assertThat(crossings.changes().get(1).along()).isCloseTo(5 * Math.PI / 6, within(1e-9));
        assertThat(crossings.changes().get(1).at().distance(new Point(.5, Math.sqrt(.75))))
                .isLessThan(1e-9);
    }

    /** Against many places along the path, each asked for by itself. */
    @Property(seed = "32")
    void partsInsideAreThoseWhosePlacesAreInside(@ForAll long seed) {
        Random random = new Random(seed);
        Region region = Region.of(Strokes.wandering(random, 3 + random.nextInt(60), .2 + random.nextDouble()));
        Path path = random.nextBoolean()
                ? new Path(Strokes.blob(random, 3 + random.nextInt(6), .6).nodes())
                : Path.through(List.of(
                        new Point(-1, random.nextDouble()),
                        new Point(1, random.nextDouble()),
                        new Point(.5, random.nextDouble())));

        Crossings crossings = Crossings.along(path, region);

        double along = 0;
        double inside = 0;
        for (Cubic segment : path.segments()) {
            int steps = 2000;
            for (int i = 0; i < steps; i++) {
                double length = segment.at((double) i / steps).distance(segment.at((i + 1.0) / steps));
                Point middle = segment.at((i + .5) / steps);
                double here = along + length / 2;
                boolean expected = region.contains(middle);
                boolean near = crossings.changes().stream().anyMatch(c -> Math.abs(c.along() - here) < 2e-3);
                boolean actual = crossings.inside().stream().anyMatch(s -> s.from() <= here && here <= s.to());
                assertThat(near || actual == expected)
                        .as("seed %s, %s along", seed, here)
                        .isTrue();
                inside += expected ? length : 0;
                along += length;
            }
        }
        assertThat(crossings.length()).isCloseTo(along, within(1e-5));
        assertThat(crossings.lengthInside())
                .isCloseTo(inside, within(2e-3 * (2 + crossings.changes().size())));
        Crossings back = Crossings.along(reversed(path), region);
        assertThat(back.changes()).hasSameSizeAs(crossings.changes());
        assertThat(back.lengthInside()).isCloseTo(crossings.lengthInside(), within(1e-7));
    }

    private static Path reversed(Path path) {
        List<Node> nodes =
                new ArrayList<>(path.nodes().stream().map(Node::reversed).toList());
        Collections.reverse(nodes);
        return new Path(nodes);
    }
}
