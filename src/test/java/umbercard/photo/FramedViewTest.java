package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import umbercard.geometry.Point;
import umbercard.model.Frame;
import umbercard.picture.Picture;

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
}
