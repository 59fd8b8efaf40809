package umbercard.spectra;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import umbercard.color.Lab;

/** Holds the tables that photographs are rendered by to what is published of them. */
class ObserverTest {

    /** Chromaticities as printed in CIE 15 (A, D50, D55, D65, D75; the figures from memory). */
    @ParameterizedTest
    @CsvSource({
        "A, 0.4476, 0.4074",
        "D50, 0.3457, 0.3585",
        "D55, 0.3324, 0.3474",
        "D65, 0.3127, 0.3290",
        "D75, 0.2990, 0.3149"
    })
    void lightsHaveTheirPublishedChromaticity(String name, double x, double y) throws ReflectiveOperationException {
        double[] xyz = Observer.white((Spectrum) Lights.class.getField(name).get(null));
        double sum = Arrays.stream(xyz).sum();
        assertThat(xyz[0] / sum).isCloseTo(x, within(4e-4));
        assertThat(xyz[1] / sum).isCloseTo(y, within(4e-4));
    }

    @Test
    void anEqualLightIsWhiteInTheMiddle() {
        // By definition of the observer: the three curves enclose the same area.
        assertThat(Observer.white(Spectrum.neutral(1)))
                .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-3 ? 0 : 1)
                .containsExactly(1, 1, 1);
    }

    @Test
    void theLedIsAWhiteOfItsOwn() {
        double[] xyz = Observer.white(Lights.LED);
        double sum = Arrays.stream(xyz).sum();
        assertThat(xyz[0] / sum).isBetween(0.33, 0.42);
        assertThat(xyz[1] / sum).isBetween(0.33, 0.42);
    }

    @Test
    void sticksCoverDarkAndLightDullAndBright() {
        List<Lab> sticks = Sticks.of(7, 36).stream().map(Observer::trueColor).toList();
        assertThat(sticks).anyMatch(c -> c.l() < 25).anyMatch(c -> c.l() > 85);
        assertThat(sticks).anyMatch(c -> c.chroma() < 6).anyMatch(c -> c.chroma() > 60);
        for (int hue = 0; hue < 360; hue += 60) {
            int from = hue;
            assertThat(sticks)
                    .as("hue %d", hue)
                    .anyMatch(c -> c.chroma() > 12 && c.hue() >= from && c.hue() < from + 60);
        }
    }
}
