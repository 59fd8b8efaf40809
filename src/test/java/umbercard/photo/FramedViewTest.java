package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import umbercard.geometry.Point;
import umbercard.model.Frame;
import umbercard.picture.Picture;
import umbercard.words.Trouble;

class FramedViewTest {
    private static final Frame WHOLE = new Frame(new Point(0.5, 0.5), 1, 0, false);

    @Test
    void givesTheWholePhotographBackPixelForPixel() {
        Picture noise = Photographs.noise(60, 40, 2);
        assertThat(FramedView.of(noise, WHOLE, 1.5, 40).pixels()).isEqualTo(noise.pixels());
    }

    @Test
    void changesLeftAndRightWhenMirrored() {
        Picture noise = Photographs.noise(60, 40, 2);
        Picture mirrored = FramedView.of(noise, new Frame(new Point(0.5, 0.5), 1, 0, true), 1.5, 40);
        assertThat(mirrored.rgb(59, 7)).isEqualTo(noise.rgb(0, 7));
        assertThat(mirrored.rgb(12, 39)).isEqualTo(noise.rgb(47, 39));
    }

    @Test
    void takesTheFramedPart() {
        Picture noise = Photographs.noise(60, 40, 2);
        // Half the height, a square, its middle at a quarter of the width and three quarters of the height.
        Picture part = FramedView.of(noise, new Frame(new Point(0.25, 0.75), 0.5, 0, false), 1, 20);
        assertThat(part.rgb(0, 0)).isEqualTo(noise.rgb(5, 20));
        assertThat(part.rgb(19, 19)).isEqualTo(noise.rgb(24, 39));
    }

    @Test
    void showsBareCardOutsideThePhotograph() {
        Picture dark = Photographs.picture(60, 40, (x, y) -> 0x202020);
        Picture wide = FramedView.of(dark, new Frame(new Point(0, 0), 1, 0, false), 1, 40);
        assertThat(wide.rgb(19, 30)).isEqualTo(FramedView.BARE_CARD);
        assertThat(wide.rgb(30, 19)).isEqualTo(FramedView.BARE_CARD);
        assertThat(wide.rgb(20, 20)).isEqualTo(0x202020);
        assertThat(FramedView.BARE_CARD).isEqualTo(0xfdfcf8);
    }

    @Test
    void reducesByTheMeanOfTheLight() {
        Picture lines = Photographs.picture(60, 40, (x, y) -> (x + y) % 2 == 0 ? 0 : 0xffffff);
        // IEC 61966-2-1: half the light is encoded as 188.
        assertThat(FramedView.of(lines, WHOLE, 1.5, 20).pixels()).containsOnly(0xbcbcbc);
    }

    @Test
    void enlargesSmoothlyInLinearLight() {
        Picture edge = Photographs.picture(2, 1, (x, y) -> x == 0 ? 0 : 0xffffff);
        Picture large = FramedView.of(edge, WHOLE, 2, 100);
        assertThat(large.rgb(20, 50)).isEqualTo(0);
        assertThat(large.rgb(180, 50)).isEqualTo(0xffffff);
        assertThat(large.rgb(100, 50) & 0xff).isCloseTo(188, within(1));
    }

    @ParameterizedTest
    @CsvSource({"90, 10, 5", "-90, 49, 34", "180, 25, 20"})
    void turnsTheFrameCounterClockwise(double tilt, int column, int row) {
        // One bright spot; a frame turned by a quarter to the left sees it a quarter further to the right.
        Picture spot = Photographs.picture(
                60, 60, (x, y) -> Math.abs(x - spotX(tilt)) <= 1 && Math.abs(y - spotY(tilt)) <= 1 ? 0xffffff : 0);
        Picture turned = FramedView.of(spot, new Frame(new Point(0.5, 0.5), 1, tilt, false), 1, 60);
        assertThat(turned.rgb(column, row)).isEqualTo(0xffffff);
    }

    /** Where the frame's column and row lie on the photograph, worked out by hand for the three cases above. */
    private static int spotX(double tilt) {
        return tilt == 90 ? 5 : tilt == -90 ? 25 : 34;
    }

    private static int spotY(double tilt) {
        return tilt == 90 ? 49 : tilt == -90 ? 49 : 39;
    }

    @Property(tries = 30, seed = "7")
    void keepsTheMiddleInTheMiddle(
            @ForAll @DoubleRange(min = -180, max = 180) double tilt,
            @ForAll @DoubleRange(min = 0.3, max = 0.7) double x,
            @ForAll @DoubleRange(min = 0.3, max = 0.7) double y,
            @ForAll boolean mirrored) {
        Picture slope = Photographs.picture(200, 160, (i, j) -> i << 16 | j << 8);
        Picture view = FramedView.of(slope, new Frame(new Point(x, y), 0.3, tilt, mirrored), 1.25, 41);
        int middle = view.rgb(view.width() / 2, 20);
        assertThat((middle >> 16) + 0.5).isCloseTo(200 * x, within(2.0));
        assertThat((middle >> 8 & 0xff) + 0.5).isCloseTo(160 * y, within(2.0));
    }

    /**
     * A bright spot at a known place of the photograph is seen where turning, scaling and mirroring by complex numbers puts
     * it: seen = (place − middle) · e^(i tilt) ÷ frame height with y down, its real part negated in a mirror.
     */
    @Property(tries = 60, seed = "8")
    void aKnownPlaceIsSeenWhereItMustBe(
            @ForAll @DoubleRange(min = -180, max = 180) double tilt,
            @ForAll @DoubleRange(min = 0.4, max = 0.6) double x,
            @ForAll @DoubleRange(min = 0.4, max = 0.6) double y,
            @ForAll @DoubleRange(min = 0.5, max = 1.4) double height,
            @ForAll @DoubleRange(min = -0.3, max = 0.3) double right,
            @ForAll @DoubleRange(min = -0.3, max = 0.3) double down,
            @ForAll boolean mirrored) {
        int tall = 200;
        double spotX = tall * (x * 1.3 + right * height / 2);
        double spotY = tall * (y + down * height / 2);
        Picture spot = Photographs.picture(260, tall, (i, j) -> gray(i + 0.5 - spotX, j + 0.5 - spotY));
        Picture view = FramedView.of(spot, new Frame(new Point(x, y), height, tilt, mirrored), 1.25, 160);
        double real = (spotX / tall - 1.3 * x) / height;
        double imaginary = (spotY / tall - y) / height;
        double cos = Math.cos(Math.toRadians(tilt));
        double sin = Math.sin(Math.toRadians(tilt));
        double across = real * cos - imaginary * sin;
        assertThat(center(view, true)).isCloseTo(160 * (1.25 / 2 + (mirrored ? -across : across)), within(0.15));
        assertThat(center(view, false)).isCloseTo(160 * (0.5 + real * sin + imaginary * cos), within(0.15));
    }

    /** A round spot of light, a few pixels wide, on black. */
    private static int gray(double x, double y) {
        return LinearLight.grayOf((float) Math.exp(-(x * x + y * y) / 18));
    }

    /** Where the light of a spot has its middle, in pixels; bare card, which is never quite gray, is left out. */
    private static double center(Picture view, boolean across) {
        double sum = 0;
        double light = 0;
        for (int i = 0; i < view.pixels().length; i++) {
            int rgb = view.pixels()[i];
            boolean gray = (rgb & 0xff) == (rgb >> 16 & 0xff);
            float here = gray ? LinearLight.OF_BYTE[rgb & 0xff] : 0;
            light += here;
            sum += here * (0.5 + (across ? i % view.width() : i / view.width()));
        }
        return sum / light;
    }

    /** Against exact area averaging, which {@code AreaAverageTest} holds to its definition; white noise is the worst case. */
    @ParameterizedTest
    @CsvSource({"300, 8", "260, 7", "200, 0.01", "150, 11", "100, 1", "72, 7"})
    void reducesNearlyAsExactAreaAveragingDoes(int height, double most) {
        Picture noise = Photographs.noise(400, 400, 3);
        assertThat(meanGreenError(FramedView.of(noise, WHOLE, 1, height), averaged(noise, height)))
                .isLessThan(most);
    }

    @ParameterizedTest
    @CsvSource({"1300", "900", "440"})
    void reducesAPhotographAsExactAreaAveragingDoes(int height) throws Trouble {
        Picture hill = PhotoReader.read(Path.of("samples", "kiln-hill.jpg"), Progress.NONE);
        Picture exact = averaged(hill, height);
        assertThat(meanGreenError(FramedView.of(hill, WHOLE, (double) exact.width() / height, height), exact))
                .isLessThan(2);
    }

    private static Picture averaged(Picture picture, int height) {
        int width = Math.round((float) picture.width() * height / picture.height());
        AreaAverage exact = new AreaAverage(picture.width(), picture.height(), width, height);
        float[] row = new float[3 * picture.width()];
        for (int j = 0; j < picture.height(); j++) {
            for (int i = 0; i < picture.width(); i++) {
                int rgb = picture.rgb(i, j);
                row[3 * i] = LinearLight.OF_BYTE[rgb >> 16 & 0xff];
                row[3 * i + 1] = LinearLight.OF_BYTE[rgb >> 8 & 0xff];
                row[3 * i + 2] = LinearLight.OF_BYTE[rgb & 0xff];
            }
            exact.take(row);
        }
        return exact.picture();
    }

    private static double meanGreenError(Picture one, Picture other) {
        double sum = 0;
        for (int i = 0; i < one.pixels().length; i++) {
            sum += Math.abs((one.pixels()[i] >> 8 & 0xff) - (other.pixels()[i] >> 8 & 0xff));
        }
        return sum / one.pixels().length;
    }

    /** Lines finer than a pixel of the view come out as their mean, with no bands, however the frame is tilted. */
    @ParameterizedTest
    @CsvSource({"0", "3", "11.5", "45"})
    void fineLinesMakeNoBands(double tilt) {
        Picture lines = Photographs.picture(600, 600, (x, y) -> y % 2 == 0 ? 0 : 0xffffff);
        Picture view = FramedView.of(lines, new Frame(new Point(.5, .5), 0.6, tilt, false), 1, 130);
        var grays = Arrays.stream(view.pixels()).map(rgb -> rgb & 0xff).summaryStatistics();
        assertThat(grays.getMin()).isGreaterThan(188 - 14);
        assertThat(grays.getMax()).isLessThan(188 + 14);
    }

    @Test
    void aTiltedBorderIsSmoothAgainstBareCard() {
        Picture dark = Photographs.picture(100, 100, (x, y) -> 0);
        Picture view = FramedView.of(dark, new Frame(new Point(0, .5), 1, 10, false), 1, 100);
        long between = Arrays.stream(view.pixels())
                .filter(rgb -> rgb != 0 && rgb != FramedView.BARE_CARD)
                .count();
        assertThat(between).isBetween(80L, 250L);
        assertThat(view.rgb(2, 2)).isEqualTo(FramedView.BARE_CARD);
        assertThat(view.rgb(97, 97)).isEqualTo(0);
    }
}
