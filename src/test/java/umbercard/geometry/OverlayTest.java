package umbercard.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collection;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.noding.MCIndexNoder;
import org.locationtech.jts.noding.Noder;
import org.locationtech.jts.noding.SegmentIntersector;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.noding.snapround.SnapRoundingNoder;
import org.locationtech.jts.operation.valid.IsValidOp;

class OverlayTest {
    private static Overlay of(Outline... outlines) {
        Overlay overlay = new Overlay();
        for (Outline outline : outlines) {
            overlay.add(Flattening.ring(outline), 1);
        }
        return overlay;
    }

    private static double area(List<Polygon> polygons) {
        return polygons.stream().mapToDouble(Polygon::getArea).sum();
    }

    private static Polygon polygon(double from, double to) {
        return of(Outline.rectangle(from, from, to, to))
                .fill(winding -> winding > 0)
                .get(0);
    }

    @Test
    void weightsTellWalksApart() {
        Overlay overlay = new Overlay();
        overlay.add(Flattening.ring(Outline.rectangle(0, 0, 2, 2)), 1);
        overlay.add(Flattening.ring(Outline.rectangle(1, 1, 3, 3)), 2);

        assertThat(area(overlay.fill(winding -> winding == 1))).isCloseTo(3, within(1e-8));
        assertThat(area(overlay.fill(winding -> winding == 2))).isCloseTo(3, within(1e-8));
        assertThat(area(overlay.fill(winding -> winding == 3))).isCloseTo(1, within(1e-8));
    }

    @Test
    void nothingFillsNothing() {
        assertThat(new Overlay().fill(winding -> winding != 0)).isEmpty();
    }

    /** On the coarsest grid every place holds many corners; still nothing is lost or doubled. */
    @Property(seed = "1", tries = 8)
    void windingNumbersShareThePlane(@ForAll long seed) {
        Random random = new Random(seed);
        Overlay overlay = of(
                Strokes.wandering(random, 20, 0x1p-26 * random.nextInt(40)),
                Strokes.wandering(random, 20, .5),
                Strokes.awkward(random));

        double parts = 0;
        for (int winding = -45; winding <= 45; winding++) {
            int wanted = winding;
            parts += winding == 0 ? 0 : area(overlay.fill(found -> found == wanted));
        }
        assertThat(parts).isCloseTo(area(overlay.fill(winding -> winding != 0)), within(1e-7));
    }

    static Noder failing() {
        return noder(() -> {
            throw new IllegalStateException("bad split edge start point");
        });
    }

    /** Leaves crossings as they are; the sweep finds that there is no order. */
    static Noder idle() {
        return noder(() -> {});
    }

    private static Noder noder(Runnable atCrossings) {
        return new MCIndexNoder(new SegmentIntersector() {
            @Override
            public void processIntersections(SegmentString a, int i, SegmentString b, int j) {
                atCrossings.run();
            }

            @Override
            public boolean isDone() {
                return false;
            }
        });
    }

    @Test
    void walksThatNoGridCanNodeAreFilledAllTheSame() {
        for (Supplier<Noder> noder : List.<Supplier<Noder>>of(OverlayTest::failing, OverlayTest::idle)) {
            Overlay bowTie = new Overlay(grid -> noder.get());
            bowTie.add(Flattening.ring(Shapes.polygon(0, 0, 2, 2, 2, 0, 0, 2)), 1);

            assertThat(area(bowTie.fill(winding -> winding != 0))).isCloseTo(2, within(1e-6));
        }
    }

    /** The fine grid fails; the next one loses half of what it is given, which must not go unseen. */
    @Test
    void aCoarserGridThatLosesSomethingIsNotBelieved() {
        Overlay squares =
                new Overlay(grid -> grid.getScale() == 0x1p30 ? failing() : losing(new SnapRoundingNoder(grid)));
        squares.add(Flattening.ring(Outline.rectangle(0, 0, 1, 1)), 1);
        squares.add(Flattening.ring(Outline.rectangle(2, 0, 3, 1)), 1);

        assertThat(area(squares.fill(winding -> winding != 0))).isCloseTo(2, within(1e-8));
    }

    private static Noder losing(Noder noder) {
        return new Noder() {
            @Override
            @SuppressWarnings("rawtypes")
            public void computeNodes(Collection strings) {
                noder.computeNodes(List.of(strings.iterator().next()));
            }

            @Override
            @SuppressWarnings("rawtypes")
            public Collection getNodedSubstrings() {
                return noder.getNodedSubstrings();
            }
        };
    }

    @Test
    void regionsThatNoGridCanNodeAreJoinedAllTheSame() {
        Overlay squares = new Overlay(grid -> failing());
        squares.add(polygon(0, 2), 1);
        squares.add(polygon(1, 3), 1);

        List<Polygon> union = squares.fill(winding -> winding > 0);

        assertThat(union)
                .singleElement()
                .satisfies(p -> assertThat(p.getNumPoints()).isEqualTo(9));
        assertThat(area(union)).isCloseTo(7, within(1e-8));
    }

    /** The last resort agrees with the overlay on strokes that cross themselves, and its polygons are as valid. */
    @Property(seed = "2", tries = 12)
    void terracesComeCloseToWhatTheOverlayFills(@ForAll long seed) {
        Random random = new Random(seed);
        Outline stroke = Strokes.wandering(random, 3 + random.nextInt(60), .05 + random.nextDouble());
        Outline copy = Strokes.shaken(stroke, random, Math.pow(10, -4 - 8 * random.nextDouble()));
        Outline other = Strokes.awkward(random);
        Overlay last = new Overlay(grid -> failing());
        Overlay usual = new Overlay();
        for (Overlay overlay : List.of(last, usual)) {
            overlay.add(Flattening.ring(stroke), 1);
            overlay.add(Flattening.ring(copy), 1);
            overlay.add(Flattening.ring(other), -1);
        }

        List<Polygon> terraced = last.fill(winding -> winding > 0);

        assertThat(area(terraced)).isCloseTo(area(usual.fill(winding -> winding > 0)), within(3e-5));
        assertThat(new IsValidOp(Overlay.collected(terraced)).getValidationError())
                .isNull();
    }
}
