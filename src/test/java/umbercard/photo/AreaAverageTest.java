package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import umbercard.color.Srgb;
import umbercard.picture.Picture;

class AreaAverageTest {

    @Test
    void halfBlackAndHalfWhiteGiveTheGrayOfHalfTheLight() {
        Picture gray = reduced(2, 1, 1, 1, new float[] {0, 0, 0, 1, 1, 1});
        // IEC 61966-2-1: half the light is encoded as 188, not as 128.
        assertThat(gray.rgb(0, 0)).isEqualTo(0xbcbcbc);
    }

    @Test
    void partsOfPixelsCountByTheirPart() {
        // Three pixels on two: the middle one is shared.
        Picture two = reduced(3, 1, 2, 1, new float[] {0, 0, 0, 1, 1, 1, 0.25f, 0.25f, 0.25f});
        assertThat(Srgb.linear(two.rgb(0, 0) & 0xff)).isCloseTo(1 / 3.0, within(0.005));
        assertThat(Srgb.linear(two.rgb(1, 0) & 0xff)).isCloseTo((0.5 + 0.25) / 1.5, within(0.005));
    }

    @Property(tries = 40, seed = "11")
    void everyPixelIsTheMeanOfWhatItCovers(
            @ForAll @IntRange(min = 1, max = 40) int sourceWidth,
            @ForAll @IntRange(min = 1, max = 40) int sourceHeight,
            @ForAll @IntRange(min = 1, max = 40) int anyWidth,
            @ForAll @IntRange(min = 1, max = 40) int anyHeight,
            @ForAll long seed) {
        int width = Math.min(anyWidth, sourceWidth);
        int height = Math.min(anyHeight, sourceHeight);
        Random random = new Random(seed);
        float[] source = new float[3 * sourceWidth * sourceHeight];
        for (int i = 0; i < source.length; i++) {
            source[i] = random.nextFloat();
        }
        Picture reduced = reduced(sourceWidth, sourceHeight, width, height, source);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                double mean = mean(source, sourceWidth, sourceHeight, width, height, x, y);
                assertThat(reduced.rgb(x, y) >> 8 & 0xff)
                        .isCloseTo((int) Math.round(255 * Srgb.encode(mean)), within(1));
            }
        }
    }

    /** The mean green by brute force: every pair of a source pixel and a target pixel. */
    private static double mean(float[] source, int sw, int sh, int w, int h, int x, int y) {
        double sum = 0;
        for (int j = 0; j < sh; j++) {
            double down = overlap(j, (double) y * sh / h, (y + 1.0) * sh / h);
            for (int i = 0; i < sw; i++) {
                sum += down * overlap(i, (double) x * sw / w, (x + 1.0) * sw / w) * source[3 * (j * sw + i) + 1];
            }
        }
        return sum * w * h / sw / sh;
    }

    private static double overlap(int pixel, double from, double to) {
        return Math.max(0, Math.min(pixel + 1, to) - Math.max(pixel, from));
    }

    private static Picture reduced(int sw, int sh, int w, int h, float[] linear) {
        AreaAverage average = new AreaAverage(sw, sh, w, h);
        for (int y = 0; y < sh; y++) {
            float[] row = new float[3 * sw];
            System.arraycopy(linear, 3 * sw * y, row, 0, row.length);
            average.take(row);
        }
        return average.picture();
    }
}
