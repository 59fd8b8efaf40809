package umbercard.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.IntPredicate;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.noding.Noder;
import org.locationtech.jts.noding.snapround.SnapRoundingNoder;
import org.locationtech.jts.operation.valid.IsValidOp;

class PatchTest {
    private static final double SLACK = 0x1p-28;

    private static List<Polygon> filled(List<Outline> outlines) {
        Overlay overlay = new Overlay();
        outlines.forEach(outline -> overlay.add(Flattening.ring(outline), 1));
        return overlay.fill(winding -> winding != 0);
    }

    private static Optional<List<Polygon>> patch(
            List<Polygon> mine, List<Polygon> other, int weight, IntPredicate inside, Noder noder) {
        Envelope meeting = Overlay.collected(mine)
                .getEnvelopeInternal()
                .intersection(Overlay.collected(other).getEnvelopeInternal());
        return new Patch(new Border(mine), 1, new Border(other), weight, inside, meeting).polygons(noder, SLACK);
    }

    private static Noder snapping() {
        return new SnapRoundingNoder(Grid.FINE_TO_COARSE.get(0));
    }

    private static double area(List<Polygon> polygons) {
        return polygons.stream().mapToDouble(Polygon::getArea).sum();
    }

    /** Many marks joined, a few of them near-copies, and a small one somewhere among them. */
    private static List<Polygon> many(Random random) {
        List<Outline> all = new ArrayList<>();
        for (int i = 0; i < 25; i++) {
            Outline blob = Strokes.blob(random, 12, .03 + .12 * random.nextDouble());
            all.add(blob);
            if (random.nextInt(4) == 0) {
                all.add(Strokes.shaken(blob, random, Math.pow(10, -4 - 8 * random.nextDouble())));
            }
        }
        all.add(Strokes.awkward(random));
        return filled(all);
    }

    /** For each of joining, cutting and intersecting: which sums of 1 and 2 are inside. */
    private static final List<IntPredicate> RULES = List.of(w -> w > 0, w -> w == 1, w -> w == 3, w -> w == 2);

    private static List<Polygon> another(Random random) {
        return random.nextInt(4) == 0
                ? many(random)
                : filled(List.of(
                        Strokes.wandering(random, 20, .05 + .5 * random.nextDouble()), Strokes.awkward(random)));
    }

    @Property(seed = "1", tries = 40)
    void aPatchIsWhatTheWholeOverlayGives(@ForAll long seed) {
        Random random = new Random(seed);
        List<Polygon> mine = many(random);
        List<Polygon> other = another(random);
        Overlay whole = new Overlay();
        mine.forEach(polygon -> whole.add(polygon, 1));
        other.forEach(polygon -> whole.add(polygon, 2));
        for (IntPredicate inside : RULES) {
            List<Polygon> expected = whole.fill(inside);

            Optional<List<Polygon>> patched = patch(mine, other, 2, inside, snapping());

            // Near-copies may move edges that were not looked at; then the whole overlay takes over.
            if (patched.isPresent()) {
                assertThat(area(patched.get())).isCloseTo(area(expected), within(1e-8));
                assertThat(new IsValidOp(Overlay.collected(patched.get())).getValidationError())
                        .isNull();
                assertThat(patched.get().stream().filter(p -> p.getArea() > 1e-7))
                        .hasSameSizeAs(expected.stream()
                                .filter(p -> p.getArea() > 1e-7)
                                .toList());
            }
        }
    }

    @Test
    void patchesSeldomGiveUp() {
        int given = 0;
        for (int seed = 0; seed < 60; seed++) {
            Random random = new Random(seed);
            given += patch(many(random), another(random), 2, winding -> winding > 0, snapping())
                            .isPresent()
                    ? 0
                    : 1;
        }
        assertThat(given).isLessThanOrEqualTo(3);
    }

    private static List<Polygon> present(Region mine, Region other, int weight, IntPredicate inside) {
        return patch(filled(mine.outlines()), filled(other.outlines()), weight, inside, snapping())
                .orElseThrow();
    }

    /** A hook touches a square in one corner; joined to it elsewhere, it closes round a hole that touches that corner. */
    @Test
    void borderThatComesToTouchItselfFarAwayIsCutThere() {
        Region square = Region.rectangle(0, 0, 1, 1);
        Region hook = Region.of(Shapes.polygon(1, 1, 2, 1, 2, -1, -1, -1, -1, .5, -2, .5, -2, -2, 3, -2, 3, 2, 1, 2));
        Region both = square.union(hook);
        assertThat(both.pieces()).hasSize(2);

        List<Polygon> joined = present(both, Region.rectangle(-1.2, .2, .2, .4), 1, winding -> winding > 0);

        assertThat(joined)
                .singleElement()
                .satisfies(piece -> assertThat(piece.getNumInteriorRing()).isEqualTo(1));
        assertThat(area(joined)).isCloseTo(both.area() + .2, within(1e-8));
        assertThat(new IsValidOp(joined.get(0)).getValidationError()).isNull();
    }

    @Test
    void holesGoToThePieceThatTheyLieIn() {
        Region holed = Region.rectangle(0, 0, 9, 3)
                .minus(Region.rectangle(1, 1, 2, 2))
                .minus(Region.rectangle(6.5, 1, 8, 2))
                .union(Region.rectangle(7, 1.2, 7.6, 1.6).minus(Region.rectangle(7.2, 1.3, 7.4, 1.5)));

        List<Polygon> halves = present(holed, Region.rectangle(4, -1, 5, 4), 2, winding -> winding == 1);

        assertThat(halves.stream().map(Polygon::getNumInteriorRing)).containsExactly(1, 1, 1);
        assertThat(halves.stream().map(Polygon::getArea).toList())
                .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-8 ? 0 : Double.compare(a, b))
                .containsExactly(11.0, 10.5, .2);
    }

    @Test
    void edgesLeftUncutAreFoundOut() {
        List<Polygon> one = filled(List.of(Outline.rectangle(0, 0, 2, 2)));
        List<Polygon> two = filled(List.of(Outline.rectangle(1, 1, 3, 3)));

        assertThat(patch(one, two, 1, w -> w > 0, snapping())).isPresent();
        assertThat(patch(one, two, 1, w -> w > 0, OverlayTest.idle())).isEmpty();
        assertThat(patch(one, two, 1, w -> w > 0, OverlayTest.failing())).isEmpty();
    }
}
