package umbercard.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

class FillCheckTest {
    private static final List<Integer> WEIGHTS = List.of(1, 2, -1);

    private static boolean agrees(List<Outline> walks, List<Polygon> polygons, IntPredicate inside) {
        List<Coordinate[]> rings = walks.stream().map(Flattening::ring).toList();
        FillCheck check = new FillCheck(rings);
        IntStream.range(0, rings.size()).forEach(i -> check.add(rings.get(i), WEIGHTS.get(i)));
        return check.agrees(polygons, inside);
    }

    private static List<Polygon> filled(List<Outline> walks, IntPredicate inside) {
        Overlay overlay = new Overlay();
        IntStream.range(0, walks.size()).forEach(i -> overlay.add(Flattening.ring(walks.get(i)), WEIGHTS.get(i)));
        return overlay.fill(inside);
    }

    @Property(seed = "1", tries = 40)
    void whatTheOverlayFillsIsFoundRight(@ForAll long seed) {
        Random random = new Random(seed);
        List<Outline> walks = List.of(
                Strokes.wandering(random, 3 + random.nextInt(30), .05 + random.nextDouble()),
                Strokes.awkward(random),
                Strokes.blob(random, 12, .2));

        for (IntPredicate inside : List.<IntPredicate>of(w -> w > 0, w -> w == 2, w -> w != 0)) {
            assertThat(agrees(walks, filled(walks, inside), inside)).isTrue();
        }
    }

    @Test
    void whatLacksAPieceIsFoundWrong() {
        List<Outline> walks = List.of(Outline.rectangle(0, 0, 3, 2), Outline.rectangle(5, 0, 5.1, .1));
        List<Polygon> all = filled(walks, winding -> winding != 0);

        assertThat(agrees(walks, all, winding -> winding != 0)).isTrue();
        assertThat(agrees(walks, all.subList(0, 1), winding -> winding != 0)).isFalse();
        assertThat(agrees(walks, Stream.concat(all.stream(), all.stream()).toList(), winding -> winding != 0))
                .isFalse();
    }

    @Test
    void whatHasNoHeightIsNothing() {
        assertThat(agrees(List.of(Shapes.polygon(0, 1, 4, 1)), List.of(), winding -> winding != 0))
                .isTrue();
    }
}
