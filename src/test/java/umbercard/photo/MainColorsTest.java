package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import umbercard.color.Lab;
import umbercard.picture.MainColor;
import umbercard.picture.Picture;

class MainColorsTest {
    private static final int[] KILN = {0x26211c, 0xc8d2de, 0x7a5a40, 0x5f6b78};

    /** Four colors, each a little uneven, 40, 30, 20 and 10 of a hundred. */
    private static Picture uneven(long seed) {
        Random random = new Random(seed);
        return Photographs.picture(100, 80, (x, y) -> {
            int at = x < 40 ? 0 : x < 70 ? 1 : x < 90 ? 2 : 3;
            int rgb = 0;
            for (int shift = 0; shift < 24; shift += 8) {
                rgb |= ((KILN[at] >> shift & 0xff) + random.nextInt(13) - 6) << shift;
            }
            return rgb;
        });
    }

    @Test
    void findsTheColorsAPictureIsMadeOf() {
        List<MainColor> found = MainColors.of(uneven(1), 4);
        assertThat(found).hasSize(4);
        double[] shares = {0.4, 0.3, 0.2, 0.1};
        for (int i = 0; i < 4; i++) {
            assertThat(found.get(i).share()).isCloseTo(shares[i], within(1e-9));
            Lab color = found.get(i).color();
            Lab wanted = Lab.ofSrgb(KILN[i]);
            assertThat(Math.hypot(color.l() - wanted.l(), Math.hypot(color.a() - wanted.a(), color.b() - wanted.b())))
                    .isLessThan(1.5);
        }
    }

    @Test
    void theSamePixelsInAnotherOrderGiveTheSame() {
        Picture picture = Photographs.noise(90, 70, 4);
        List<Integer> pixels =
                new ArrayList<>(IntStream.of(picture.pixels()).boxed().toList());
        Collections.shuffle(pixels, new Random(9));
        Picture shuffled = Photographs.picture(90, 70, (x, y) -> pixels.get(y * 90 + x));
        assertThat(MainColors.of(shuffled, 12)).isEqualTo(MainColors.of(picture, 12));
    }

    /** Where Lloyd's rounds end: each color is the mean of all that is nearer to it than to any other. */
    @Test
    void eachColorIsTheMeanOfWhatIsNearestToIt() {
        Picture noise = Photographs.noise(90, 70, 4);
        // One color in each bin of the histogram, so that a bin's mean is a pixel's color.
        Picture picture = Photographs.picture(90, 70, (x, y) -> noise.rgb(x, y) & 0xf8f8f8 | 0x040404);
        List<MainColor> found = MainColors.of(picture, 12);
        assertThat(found).hasSize(12);
        double[][] sums = new double[12][4];
        for (int rgb : picture.pixels()) {
            Lab color = Lab.ofSrgb(rgb);
            double[] sum = sums[nearest(color, found)];
            sum[0] += color.l();
            sum[1] += color.a();
            sum[2] += color.b();
            sum[3]++;
        }
        for (int i = 0; i < 12; i++) {
            assertThat(found.get(i).share()).isCloseTo(sums[i][3] / 6300, within(1e-12));
            assertThat(found.get(i).color().l()).isCloseTo(sums[i][0] / sums[i][3], within(1e-3));
            assertThat(found.get(i).color().a()).isCloseTo(sums[i][1] / sums[i][3], within(1e-3));
            assertThat(found.get(i).color().b()).isCloseTo(sums[i][2] / sums[i][3], within(1e-3));
        }
        assertThat(found).isSortedAccordingTo((one, other) -> Double.compare(other.share(), one.share()));
    }

    private static int nearest(Lab color, List<MainColor> among) {
        return IntStream.range(0, among.size())
                .boxed()
                .min(Comparator.comparingDouble(
                        i -> distance(color, among.get(i).color())))
                .orElseThrow();
    }

    private static double distance(Lab one, Lab other) {
        return Math.hypot(one.l() - other.l(), Math.hypot(one.a() - other.a(), one.b() - other.b()));
    }

    @Test
    void onlyWhatCountsIsLookedAt() {
        Picture picture = uneven(2);
        boolean[] right = new boolean[8000];
        for (int i = 0; i < right.length; i++) {
            right[i] = i % 100 >= 90;
        }
        List<MainColor> found = MainColors.of(picture, right, 1);
        assertThat(found).hasSize(1);
        assertThat(found.get(0).color().l()).isCloseTo(Lab.ofSrgb(KILN[3]).l(), within(1.0));
        assertThat(MainColors.of(picture, new boolean[8000], 3)).isEmpty();
    }

    @Test
    void fewerColorsComeWhereThereAreFewer() {
        Picture two = Photographs.picture(10, 10, (x, y) -> x < 3 ? 0xff0000 : 0x0000ff);
        List<MainColor> found = MainColors.of(two, 6);
        assertThat(found).hasSize(2);
        assertThat(found.get(0).color().srgb()).isEqualTo(0x0000ff);
        assertThat(found.get(1).share()).isCloseTo(0.3, within(1e-12));
        assertThatThrownBy(() -> MainColors.of(two, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> MainColors.of(two, new boolean[3], 2)).isInstanceOf(IllegalArgumentException.class);
    }
}
