package umbercard.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.Area;
import org.locationtech.jts.geom.Coordinate;

class FlatteningTest {
    @Property(seed = "1")
    void thePolygonHasTheAreaOfTheDrawnCurve(@ForAll long seed) {
        Outline blob = Strokes.blob(new Random(seed), 3 + (int) Math.floorMod(seed, 40L), .5);

        assertThat(Area.ofRing(Flattening.ring(blob))).isCloseTo(blob.moments().area(), within(1e-14));
    }

    @Property(seed = "2", tries = 5)
    void noCutStraysFurtherThanTheToleranceFromTheCurve(@ForAll long seed) {
        Outline blob = Strokes.blob(new Random(seed), 12, .5);

        List<Point> curve = new ArrayList<>();
        for (Cubic segment : blob.segments()) {
            for (int i = 0; i <= 500; i++) {
                curve.add(segment.at(i / 500.0));
            }
        }
        for (Coordinate cut : Flattening.ring(blob)) {
            double distance = Double.MAX_VALUE;
            for (int i = 1; i < curve.size(); i++) {
                distance = Math.min(
                        distance, RunFit.distanceToLine(new Point(cut.x, cut.y), curve.get(i - 1), curve.get(i)));
            }
            assertThat(distance).isLessThan(Flattening.TOLERANCE);
        }
    }

    @Property(seed = "3")
    void aSegmentAndItsReverseAreCutAlike(@ForAll long seed) {
        Outline blob = Strokes.wandering(new Random(seed), 9, .7);

        List<Coordinate> there = new ArrayList<>(List.of(Flattening.ring(blob)));
        List<Coordinate> back = new ArrayList<>(List.of(Flattening.ring(Shapes.reversed(blob))));
        Collections.reverse(back);
        there.remove(there.size() - 1);
        back.remove(back.size() - 1);
        Collections.rotate(back, there.size() - back.indexOf(there.get(0)));
        assertThat(back).hasSameSizeAs(there);
        for (int i = 0; i < there.size(); i++) {
            assertThat(back.get(i).distance(there.get(i))).isLessThan(1e-12);
        }
    }

    /** Where outlines cross within a chord the area is off by a part of that chord's share, not of the whole. */
    @Property(seed = "4", tries = 10)
    void crossingCurvesHaveTheirAreaToTheStatedError(@ForAll long seed) {
        Random random = new Random(seed);
        Region coarse = Region.empty();
        Region fine = Region.empty();
        for (int i = 0; i < 12; i++) {
            Outline blob = Strokes.blob(random, 12, .4);
            coarse = i % 3 == 2 ? coarse.minus(Region.of(blob)) : coarse.union(Region.of(blob));
            Region exact = Region.of(cutInParts(blob, 32));
            fine = i % 3 == 2 ? fine.minus(exact) : fine.union(exact);
        }
        assertThat(coarse.area()).isCloseTo(fine.area(), within(1e-6));
    }

    private static Outline cutInParts(Outline outline, int parts) {
        List<Cubic> all = new ArrayList<>();
        for (Cubic segment : outline.segments()) {
            for (int i = 0; i < parts; i++) {
                all.add(segment.part((double) i / parts, (i + 1.0) / parts));
            }
        }
        List<Node> nodes = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            Cubic before = all.get((i + all.size() - 1) % all.size());
            nodes.add(new Node(all.get(i).start(), before.pullEnd(), all.get(i).pullStart(), true));
        }
        return new Outline(nodes);
    }

    @Test
    void segmentsWithoutLengthOrWithCuspsAreCutWithoutHarm() {
        Point a = new Point(.5, .5);
        Point far = new Point(.9, .1);
        Outline dot = new Outline(List.of(new Node(a, a, a, true), new Node(a, a, a, true)));
        Outline loop = new Outline(List.of(new Node(a, far, far, true), new Node(a, far, far, true)));
        Outline cusp = new Outline(List.of(
                new Node(a, a, new Point(1, 1), false), new Node(new Point(1, .5), a, new Point(1, .5), false)));

        assertThat(Flattening.ring(dot)).allSatisfy(c -> assertThat(c.x).isEqualTo(.5));
        assertThat(Flattening.ring(loop))
                .allSatisfy(c -> assertThat(c.isValid()).isTrue());
        assertThat(Area.ofRing(Flattening.ring(cusp))).isCloseTo(cusp.moments().area(), within(1e-9));
    }
}
