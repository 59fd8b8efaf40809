package umbercard.color;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.ajalt.colormath.calculate.DifferenceKt;
import com.github.ajalt.colormath.model.LAB;
import com.github.ajalt.colormath.model.LCHab;
import com.github.ajalt.colormath.model.RGB;
import com.github.ajalt.colormath.model.RGBColorSpaces;
import com.github.ajalt.colormath.model.XYZ;
import com.github.ajalt.colormath.model.XYZColorSpace;
import com.github.ajalt.colormath.model.XYZColorSpaces;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Ours beside colormath 3.6.1, a general library of color models, on the same 10 000 random colors of the screen. It counts in
 * single precision and has D65 and D50 to more digits (CIE 15: x 0.31270, 0.34567), which is what the differences are of.
 */
class AnotherLibraryTest {
    private static final int[] COLORS =
            new Random(1931).ints(10_000, 0, 0x1000000).toArray();

    private static RGB theirs(int rgb) {
        return new RGB(
                (rgb >> 16 & 0xff) / 255f,
                (rgb >> 8 & 0xff) / 255f,
                (rgb & 0xff) / 255f,
                1f,
                RGBColorSpaces.INSTANCE.getSRGB());
    }

    private static double largest(ToDoubleFunction<Integer> difference) {
        return IntStream.of(COLORS).boxed().mapToDouble(difference).max().orElseThrow();
    }

    private static double apart(double l1, double a1, double b1, double l2, double a2, double b2) {
        return Math.max(Math.abs(l1 - l2), Math.max(Math.abs(a1 - a2), Math.abs(b1 - b2)));
    }

    private static double apart(Xyz ours, XYZ there) {
        return apart(ours.x(), ours.y(), ours.z(), there.getX(), there.getY(), there.getZ());
    }

    @Test
    void tristimulusValuesUnderD65() {
        assertThat(largest(rgb -> apart(Lab.ofSrgb(rgb).xyz(), theirs(rgb).toXYZ())))
                .isBetween(0.0, 1e-12);
    }

    @Test
    void tristimulusValuesUnderD50() {
        XYZColorSpace d50 = XYZColorSpaces.INSTANCE.getXYZ50();
        assertThat(largest(rgb -> apart(
                        WhitePoint.D65.adapt(Lab.ofSrgb(rgb).xyz(), WhitePoint.D50),
                        theirs(rgb).toXYZ().adaptTo(d50))))
                .isBetween(0.0, 1e-12);
    }

    @Test
    void labUnderD65() {
        assertThat(largest(rgb -> {
                    Lab ours = Lab.ofSrgb(rgb);
                    LAB there = theirs(rgb).toLAB();
                    return apart(ours.l(), ours.a(), ours.b(), there.getL(), there.getA(), there.getB());
                }))
                .isBetween(0.0, 1e-12);
    }

    @Test
    void labUnderD50() {
        XYZColorSpace d50 = XYZColorSpaces.INSTANCE.getXYZ50();
        assertThat(largest(rgb -> {
                    MeasuredLab ours = MeasuredLab.of(Lab.ofSrgb(rgb), WhitePoint.D50);
                    LAB there = theirs(rgb).toXYZ().adaptTo(d50).toLAB();
                    return apart(ours.l(), ours.a(), ours.b(), there.getL(), there.getA(), there.getB());
                }))
                .isBetween(0.0, 1e-12);
    }

    /** The hue as a length, because that of a gray means nothing. */
    @Test
    void chromaAndHue() {
        assertThat(largest(rgb -> {
                    Lch ours = Lab.ofSrgb(rgb).lch();
                    LCHab there = theirs(rgb).toLCHab();
                    double turn = Math.toRadians(Math.IEEEremainder(ours.h() - there.getH(), 360));
                    return apart(ours.l(), ours.c(), ours.c() * turn, there.getL(), there.getC(), 0);
                }))
                .isBetween(0.0, 1e-12);
    }

    /** Each color beside the one drawn before it. */
    @Test
    void differencesByCiede2000() {
        assertThat(IntStream.range(1, COLORS.length)
                        .mapToDouble(i ->
                                Math.abs(Ciede2000.difference(Lab.ofSrgb(COLORS[i - 1]), Lab.ofSrgb(COLORS[i]))
                                        - DifferenceKt.differenceCIE2000(theirs(COLORS[i - 1]), theirs(COLORS[i]))))
                        .max()
                        .orElseThrow())
                .isBetween(0.0, 1e-12);
    }
}
