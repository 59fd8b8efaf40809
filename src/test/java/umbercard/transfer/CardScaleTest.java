package umbercard.transfer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import umbercard.model.Surface;
import umbercard.model.Surface.Unit;

class CardScaleTest {
    private static final Surface KILN_HILL = new Surface(12, 9, Unit.IN, 0.25, Optional.empty(), true);

    @Test
    void comparesTheOpeningNotTheSheet() {
        // 12 in less twice a quarter inch of tape is 11.5 in, 292.1 mm.
        assertThat(CardScale.of(KILN_HILL, 100).times()).isEqualTo(2.921, within(1e-9));
    }

    @Test
    void knowsCentimeters() {
        Surface panel = new Surface(40, 30, Unit.CM, 0, Optional.empty(), false);
        assertThat(CardScale.of(panel, 100).times()).isEqualTo(4, within(1e-12));
    }

    @Test
    void isUnderOneForAPanelSmallerThanTheCard() {
        Surface small = new Surface(5, 4, Unit.CM, 0, Optional.empty(), false);
        assertThat(CardScale.of(small, 100).times()).isEqualTo(0.5, within(1e-12));
    }

    @Test
    void carriesALengthToTheSurface() {
        CardScale scale = new CardScale(2.54);
        assertThat(scale.onSurface(10, Unit.IN)).isEqualTo(1, within(1e-12));
        assertThat(scale.onSurface(10, Unit.CM)).isEqualTo(2.54, within(1e-12));
    }

    @Test
    void refusesNoScaleAtAll() {
        assertThatThrownBy(() -> CardScale.of(KILN_HILL, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
