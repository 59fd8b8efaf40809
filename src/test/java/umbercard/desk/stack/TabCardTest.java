package umbercard.desk.stack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class TabCardTest {
    @Property(tries = 100, seed = "3")
    void theNotanKeepsItsProportionsWithinTheCardAndTheCardWithinTheStack(
            @ForAll @DoubleRange(min = 0.3, max = 4) double ratio) {
        TabCard card = TabCard.of(ratio);
        Rectangle2D.Float frame = card.frame();
        assertThat((double) frame.width / frame.height).isCloseTo(ratio, within(1e-3));

        Rectangle2D body = card.outline(60, TabCard.PULLED).getBounds2D();
        assertThat(body.getMaxX()).isLessThanOrEqualTo(TabCard.WIDTH - 1);
        assertThat(body.getMaxY()).isLessThan(card.height());
        Rectangle2D.Double pulled =
                new Rectangle2D.Double(frame.x + TabCard.PULLED, frame.y, frame.width, frame.height + TabCard.CAPTION);
        assertThat(body.contains(pulled)).isTrue();
    }
}
