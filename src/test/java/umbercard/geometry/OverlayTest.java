package umbercard.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

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

    /** The net under the quick way: edges that cross where none was expected to leave no order, so all are noded. */
    @Test
    void walksThatMeetWhereNoneWasExpectedToAreNodedAfterAll() {
        Overlay squares = new Overlay();
        squares.addMine(polygon(0, 2), 1);
        squares.addOther(polygon(1, 3), 1);
        Envelope nowhere = new Envelope(50, 51, 50, 51);

        assertThat(area(squares.fill(winding -> winding > 0, nowhere))).isCloseTo(7, within(1e-8));
        assertThat(area(squares.fill(winding -> winding == 2, nowhere))).isCloseTo(1, within(1e-8));
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
}
