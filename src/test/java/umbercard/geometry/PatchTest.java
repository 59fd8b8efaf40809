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

    @Property(seed = "1", tries = 40)
    void aPatchIsWhatTheWholeOverlayGives(@ForAll long seed) {
        Random random = new Random(seed);
        List<Polygon> mine = many(random);
        List<Polygon> other = random.nextInt(4) == 0
                ? many(random)
                : filled(List.of(
                        Strokes.wandering(random, 20, .05 + .5 * random.nextDouble()), Strokes.awkward(random)));
        Overlay whole = new Overlay();
        mine.forEach(polygon -> whole.add(polygon, 1));
        other.forEach(polygon -> whole.add(polygon, 2));
        for (IntPredicate inside : RULES) {
            List<Polygon> expected = whole.fill(inside);

            Optional<List<Polygon>> patched = patch(mine, other, 2, inside, snapping());

            assertThat(patched).as("noding does not fail on these").isPresent();
            assertThat(area(patched.get())).isCloseTo(area(expected), within(1e-8));
            assertThat(new IsValidOp(Overlay.collected(patched.get())).getValidationError())
                    .isNull();
            assertThat(patched.get().stream().filter(p -> p.getArea() > 1e-7))
                    .hasSameSizeAs(
                            expected.stream().filter(p -> p.getArea() > 1e-7).toList());
        }
    }

    /** Squares that touch in points far from where two of them are joined: the joined one's border must not touch itself. */
    @Test
    void borderThatComesToTouchItselfFarAwayIsCutThere() {
        Region board = Region.empty();
        for (int i = 0; i < 16; i++) {
            int x = i % 4;
            int y = i / 4;
            board = (x + y) % 2 == 0 ? board.union(Region.rectangle(x, y, x + 1, y + 1)) : board;
        }
        assertThat(board.pieces()).hasSize(8);

        Region joined = board.union(Region.rectangle(.9, .9, 1.1, 1.1))
                .union(Region.rectangle(1.9, .9, 2.1, 1.1))
                .union(Region.rectangle(.9, 1.9, 1.1, 2.1));

        // Three of the squares have come together with the one that all of them touch.
        assertThat(joined.pieces()).hasSize(8 - 3);
        assertThat(joined.area()).isCloseTo(8 + 3 * .02, within(1e-8));
        Region ringed = joined.union(Region.rectangle(1.9, 1.9, 2.1, 2.1));
        assertThat(ringed.pieces()).hasSize(8 - 3 - 1);
        assertThat(ringed.area()).isCloseTo(8 + 4 * .02, within(1e-8));
        assertThat(Region.of(ringed.outlines()).area()).isCloseTo(ringed.area(), within(1e-8));
    }

    @Test
    void holesGoToThePieceThatTheyLieIn() {
        Region holed = Region.rectangle(0, 0, 9, 3)
                .minus(Region.rectangle(1, 1, 2, 2))
                .minus(Region.rectangle(7, 1, 8, 2))
                .union(Region.rectangle(7.4, 1.4, 7.6, 1.6));

        Region halves = holed.minus(Region.rectangle(4, -1, 5, 4));

        assertThat(halves.pieces().stream().map(piece -> piece.outlines().size()))
                .containsExactly(2, 2, 1);
        assertThat(halves.pieces().stream().map(Region::area).toList())
                .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-8 ? 0 : Double.compare(a, b))
                .containsExactly(11.0, 11.0, .04);
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
