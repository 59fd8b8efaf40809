package umbercard.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import umbercard.geometry.Size;

class SurfaceTest {
    private static Surface inches(double width, double height, double tape) {
        return new Surface(width, height, Surface.Unit.IN, tape, Optional.empty(), false);
    }

    /** The trade's own example: the opening's proportions are not the sheet's. */
    @Test
    void theOpeningIsTheSurfaceLessItsTape() {
        assertThat(inches(9, 12, 0.25).opening()).isEqualTo(new Size(8.5, 11.5));
        assertThat(inches(12, 9, 0.25).opening()).isEqualTo(new Size(11.5, 8.5));
        assertThat(inches(12, 9, 0.25).ratio()).isCloseTo(1.352941, within(5e-7));
        assertThat(inches(12, 9, 0).ratio()).isCloseTo(4.0 / 3, within(1e-15));
    }

    @ParameterizedTest
    @CsvSource({"0,9,0", "12,-1,0", "12,9,-0.1", "12,9,4.5", "9,12,4.5", "12,9,NaN", "Infinity,9,0"})
    void aSurfaceLeavesSomethingToPaint(double width, double height, double tape) {
        assertThatThrownBy(() -> inches(width, height, tape)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void anInchIsExactlyTwentyFivePointFourMillimeters() {
        assertThat(Surface.Unit.IN.millimeters()).isEqualTo(25.4);
        assertThat(Surface.Unit.CM.millimeters()).isEqualTo(10);
    }
}
