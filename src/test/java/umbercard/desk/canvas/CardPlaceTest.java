package umbercard.desk.canvas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Point2D;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import umbercard.geometry.Point;
import umbercard.geometry.Size;

class CardPlaceTest {
    private static final Size CARD = new Size(152.4, 101.6);

    @Property
    void theCardKeepsItsProportionsAndTheFrameItsOwnInsideIt(
            @ForAll @DoubleRange(min = 330, max = 3000) double width,
            @ForAll @DoubleRange(min = 230, max = 2000) double height,
            @ForAll @DoubleRange(min = 0.4, max = 2.5) double ratio) {
        CardPlace place = CardPlace.in(width, height, CARD, ratio);
        assertThat(place.card().getWidth() / place.card().getHeight())
                .isCloseTo(1.5, within(2 / place.card().getHeight() * 1.5));
        assertThat(place.frame().getWidth() / place.frame().getHeight()).isCloseTo(ratio, within(1e-9));
        assertThat(place.card().contains(place.frame())).isTrue();
        assertThat(place.card().getWidth()).isLessThanOrEqualTo(width);
        assertThat(place.card().getHeight()).isLessThanOrEqualTo(height);
    }

    @Test
    void screenAndFrameUnitsAreInverse() {
        CardPlace place = CardPlace.in(800, 600, CARD, 1.353);
        Point2D corner = place.toScreen().transform(new Point2D.Double(1.353, 1), null);
        assertThat(corner.getX()).isCloseTo(place.frame().getMaxX(), within(1e-9));
        Point back = place.toFrame(corner.getX(), corner.getY());
        assertThat(back.x()).isCloseTo(1.353, within(1e-9));
        assertThat(back.y()).isCloseTo(1, within(1e-9));
        assertThat(place.pixel() * place.frame().getHeight()).isCloseTo(1, within(1e-12));
    }
}
