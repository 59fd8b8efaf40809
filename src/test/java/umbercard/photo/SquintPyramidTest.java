package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import ij.plugin.filter.GaussianBlur;
import ij.process.FloatProcessor;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import umbercard.picture.Picture;
import umbercard.picture.ValueField;

class SquintPyramidTest {
    private static final int WIDTH = 203;
    private static final int HEIGHT = 150;

    static Stream<Arguments> radiiAndPictures() {
        return Stream.of(0.7, 1.5, 3.0, 4.0, 4.3, 6.0, 8.4, 12.0, 17.0, 25.0, 45.0)
                .flatMap(sigma -> Stream.of(
                        Arguments.of(sigma, "stripes", stripes()),
                        Arguments.of(sigma, "noise", Photographs.noise(WIDTH, HEIGHT, 3)),
                        Arguments.of(sigma, "shapes", shapes())));
    }

    private static Picture stripes() {
        return Photographs.picture(WIDTH, HEIGHT, (x, y) -> (x + 2 * y) / 11 % 2 == 0 ? 0x141414 : 0xf4f4f4);
    }

    /** A light sky over a dark hill, with small dark and light bits. */
    private static Picture shapes() {
        return Photographs.picture(WIDTH, HEIGHT, (x, y) -> {
            boolean hill = y > 80 - 30 * Math.sin(x / 40.0);
            boolean bit = x % 23 < 4 && y % 19 < 4;
            return hill == bit ? 0xd8dce4 : 0x28241c;
        });
    }

    /** The reference is the Gaussian's definition, sampled out to six sigma. Wanted is 1 L* from 4 pixels on. */
    @ParameterizedTest(name = "{1} at {0}")
    @MethodSource("radiiAndPictures")
    void comesNearATrueGaussian(double sigma, String name, Picture picture) {
        ValueField blurred = new SquintPyramid(picture).values(SquintWay.GAUSSIAN, sigma);
        ValueField exact = Gaussians.exact(Values.of(picture), sigma);
        assertThat(difference(blurred, exact)).isLessThan(sigma < 3 ? 0.02 : 0.5);
    }

    /** ImageJ cuts its kernel off smoothly and repeats the border's pixels, so only the middle is held against it. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 3, 6, 12})
    void agreesWithImageJ(double sigma) {
        Picture picture = shapes();
        ValueField ours = new SquintPyramid(picture).values(SquintWay.GAUSSIAN, sigma);
        FloatProcessor theirs =
                new FloatProcessor(WIDTH, HEIGHT, Values.of(picture).luminance().clone());
        new GaussianBlur().blurGaussian(theirs, sigma, sigma, 1e-4);
        double sum = 0;
        int count = 0;
        int margin = 40;
        for (int y = margin; y < HEIGHT - margin; y++) {
            for (int x = margin; x < WIDTH - margin; x++) {
                sum += Math.abs(Lightness.of(ours.at(x, y)) - Lightness.of(theirs.getf(x, y)));
                count++;
            }
        }
        assertThat(sum / count).isLessThan(0.25);
    }

    static double difference(ValueField one, ValueField other) {
        float[] a = Lightness.of(one);
        float[] b = Lightness.of(other);
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += Math.abs(a[i] - b[i]);
        }
        return sum / a.length;
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 5, 20})
    void colorsAndValuesAreOfOneBlur(double sigma) {
        for (SquintWay way : SquintWay.values()) {
            SquintPyramid pyramid = new SquintPyramid(shapes());
            ValueField values = pyramid.values(way, sigma);
            ValueField ofColors = Values.of(pyramid.colors(way, sigma).picture());
            assertThat(difference(values, ofColors)).as(way.key()).isLessThan(0.2);
        }
    }

    @Test
    void aSmallMoveOfTheRuleChangesLittle() {
        SquintPyramid pyramid = new SquintPyramid(shapes());
        for (SquintWay way : SquintWay.values()) {
            ValueField last = pyramid.values(way, 1);
            for (double sigma = 1.05; sigma < 30; sigma *= 1.05) {
                ValueField next = pyramid.values(way, sigma);
                assertThat(difference(last, next)).as(way + " at " + sigma).isLessThan(1.6);
                last = next;
            }
        }
    }

    @Test
    void isTheSameWhateverWasAskedBefore() {
        SquintPyramid used = new SquintPyramid(shapes());
        List<Double> sigmas = new ArrayList<>(List.of(30.0, 2.0, 9.0, 17.0));
        sigmas.forEach(sigma -> used.colors(SquintWay.KEEPING_EDGES, sigma));
        Collections.reverse(sigmas);
        for (double sigma : sigmas) {
            assertThat(used.colors(SquintWay.GAUSSIAN, sigma).picture().pixels())
                    .isEqualTo(new SquintPyramid(shapes())
                            .colors(SquintWay.GAUSSIAN, sigma)
                            .picture()
                            .pixels());
        }
    }

    @Test
    void aBlurOfNothingGivesTheSame() {
        Picture picture = shapes();
        SquintPyramid pyramid = new SquintPyramid(picture);
        assertThat(pyramid.colors(SquintWay.KEEPING_EDGES, 0).picture()).isSameAs(picture);
        assertThat(pyramid.values(SquintWay.GAUSSIAN, 0).luminance())
                .isEqualTo(Values.of(picture).luminance());
        for (double wrong : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> pyramid.values(SquintWay.GAUSSIAN, wrong))
                    .isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void evenTheSmallestPictureCanBeSquintedAt() {
        for (SquintWay way : SquintWay.values()) {
            assertThat(new SquintPyramid(Photographs.picture(1, 1, (x, y) -> 0x808080))
                            .colors(way, 40)
                            .picture()
                            .pixels())
                    .containsExactly(0x808080);
            assertThat(new SquintPyramid(Photographs.picture(3, 1, (x, y) -> 0x404040))
                            .values(way, 7)
                            .luminance())
                    .hasSize(3);
        }
    }

    /** The middle of a long edge between two values, and a small bit of the one in the other. */
    @Test
    void keepingEdgesMeltsBitsAndKeepsTheEdge() {
        Picture picture = Photographs.picture(
                200, 150, (x, y) -> x < 100 || Math.hypot(x - 150, y - 75) < 3 ? 0x303030 : 0xd0d0d0);
        SquintPyramid pyramid = new SquintPyramid(picture);
        float[] plain = Lightness.of(Values.of(picture));
        float[] soft = Lightness.of(pyramid.values(SquintWay.GAUSSIAN, 8));
        float[] kept = Lightness.of(pyramid.values(SquintWay.KEEPING_EDGES, 8));
        int row = 20 * 200;
        double step = plain[row + 120] - plain[row + 80];
        assertThat(soft[row + 104] - soft[row + 96]).as("soft").isLessThan((float) (0.45 * step));
        assertThat(kept[row + 104] - kept[row + 96]).as("kept").isGreaterThan((float) (0.9 * step));
        int bit = 75 * 200 + 150;
        assertThat(plain[bit + 20] - kept[bit]).as("the bit").isLessThan((float) (0.25 * step));
    }
}
