package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import umbercard.color.Lab;
import umbercard.picture.Picture;

class SamplingTest {
    @Test
    void aPointIsThePixelItLiesIn() {
        Picture picture = Photographs.noise(9, 7, 2);
        Lab found = Sampling.disk(picture, 4.3, 2.9, 0).orElseThrow();
        assertThat(found.srgb()).isEqualTo(picture.rgb(4, 2));
    }

    @Test
    void aDiskIsTheMeanOfItsPixelsInLinearLight() {
        Picture edge = Photographs.picture(40, 40, (x, y) -> x < 20 ? 0x000000 : 0xffffff);
        Lab found = Sampling.disk(edge, 20, 20, 8).orElseThrow();
        // IEC 61966-2-1: half the light is encoded as 188.
        assertThat(found.srgb()).isEqualTo(0xbcbcbc);
        assertThat(found.luminance()).isCloseTo(0.5, within(1e-6));
    }

    @Test
    void itCountsThePixelsWhoseMiddlesLieInIt() {
        for (double radius : new double[] {0.4, 1, 2.7, 6.1}) {
            double x = 10.2;
            double y = 8.7;
            Picture marked = Photographs.picture(
                    21, 17, (i, j) -> Math.hypot(i + 0.5 - x, j + 0.5 - y) <= radius ? 0xffffff : 0);
            assertThat(Sampling.disk(marked, x, y, radius).orElseThrow().l())
                    .as("radius " + radius)
                    .isCloseTo(100, within(1e-4));
            Picture around = Photographs.picture(
                    21, 17, (i, j) -> Math.hypot(i + 0.5 - x, j + 0.5 - y) <= radius ? 0 : 0xffffff);
            assertThat(Sampling.disk(around, x, y, radius).orElseThrow().l()).isCloseTo(0, within(1e-4));
        }
    }

    @Test
    void itIsCutAtTheBorderAndEmptyBeyond() {
        Picture gray = Photographs.picture(5, 4, (x, y) -> 0x777777);
        assertThat(Sampling.disk(gray, 0, 0, 30).orElseThrow().srgb()).isEqualTo(0x777777);
        assertThat(Sampling.disk(gray, 4.999, 3.999, 1).orElseThrow().srgb()).isEqualTo(0x777777);
        assertThat(Sampling.disk(gray, 5, 2, 1)).isEmpty();
        assertThat(Sampling.disk(gray, 2, -0.01, 1)).isEmpty();
        assertThat(Sampling.disk(gray, Double.NaN, 1, 1)).isEmpty();
    }

    @Test
    void theMeanIsOfWhatCounts() {
        Picture picture = Photographs.picture(4, 1, (x, y) -> x % 2 == 0 ? 0x123456 : 0xffffff);
        assertThat(Sampling.mean(picture, new boolean[] {true, false, true, false})
                        .orElseThrow()
                        .srgb())
                .isEqualTo(0x123456);
        assertThat(Sampling.mean(picture, new boolean[4])).isEmpty();
    }
}
