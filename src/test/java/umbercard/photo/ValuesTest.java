package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import umbercard.color.Lab;
import umbercard.color.MunsellValue;
import umbercard.color.Srgb;
import umbercard.picture.Picture;
import umbercard.picture.ValueField;

class ValuesTest {

    @Test
    void splitsTwoValuesBetweenThem() {
        float dark = (float) MunsellValue.luminance(3);
        float light = (float) MunsellValue.luminance(8);
        double split = Values.otsu(Fields.of(20, 20, (x, y) -> x < 0.3 ? dark : light));
        assertThat(split).isCloseTo(5.5, within(0.05));
    }

    @Test
    void splitsAFieldOfOneValueInTheMiddle() {
        assertThat(Values.otsu(Fields.of(8, 8, (x, y) -> 0.4))).isEqualTo(5);
    }

    @Test
    void grayHasTheSameLightness() {
        Picture colors = Photographs.noise(64, 64, 4);
        Picture gray = Values.gray(Values.of(colors));
        for (int i = 0; i < colors.pixels().length; i++) {
            int rgb = gray.pixels()[i];
            assertThat(rgb & 0xff).isEqualTo(rgb >> 8 & 0xff).isEqualTo(rgb >> 16);
            // Half a step of 8 bits is under 0.26 L* (CIE 15, IEC 61966-2-1).
            assertThat(Lab.ofSrgb(rgb).l())
                    .isCloseTo(Lab.ofSrgb(colors.pixels()[i]).l(), within(0.26));
        }
    }

    @Test
    void keepsEveryGrayAsItIs() {
        Picture grays = Photographs.picture(256, 1, (x, y) -> x * 0x010101);
        assertThat(Values.gray(Values.of(grays)).pixels()).isEqualTo(grays.pixels());
    }

    @Test
    void partsTwoValuesAtTheSplit() {
        // A gray of 118 lies just under Munsell value 5, one of 122 just over it.
        assertThat(MunsellValue.ofLuminance(Srgb.luminance(0x767676))).isLessThan(5);
        assertThat(MunsellValue.ofLuminance(Srgb.luminance(0x7a7a7a))).isGreaterThan(5);
        ValueField field = Values.of(Photographs.picture(2, 1, (x, y) -> x == 0 ? 0x767676 : 0x7a7a7a));
        assertThat(Values.twoValues(field, 5).pixels()).containsExactly(0x1d1d1d, 0xfdfcf8);
        assertThat(Values.twoValues(field, 5, 1, 2).pixels()).containsExactly(1, 2);
        assertThat(Values.twoValues(field, 0, 1, 2).pixels()).containsExactly(2, 2);
        assertThat(Values.twoValues(field, 10, 1, 2).pixels()).containsExactly(1, 1);
        assertThat(Values.shareBelow(field, 5)).isEqualTo(0.5);
    }

    @Property(tries = 60, seed = "3")
    void findsTheSplitOfAShare(@ForAll @DoubleRange(min = 0, max = 1) double share, @ForAll long seed) {
        ValueField field = Fields.noise(50, 40, seed);
        double split = Values.splitForShare(field, share);
        assertThat(Values.shareBelow(field, split)).isCloseTo(share, within(0.5 / 2000 + 1e-9));
    }

    @Property(tries = 60, seed = "3")
    void findsTheNearestSplitAmongFewGrays(@ForAll @DoubleRange(min = 0, max = 1) double share, @ForAll long seed) {
        ValueField noise = Fields.noise(30, 20, seed);
        ValueField field = Fields.of(30, 20, (x, y) -> Math.floor(4 * noise.at((int) (x * 20), (int) (y * 20))) / 4);
        double reached = Values.shareBelow(field, Values.splitForShare(field, share));
        double nearest = Stream.of(0.0, 0.25, 0.5, 0.75, 1.0)
                .mapToDouble(border -> shareUnder(field, border))
                .map(possible -> Math.abs(possible - share))
                .min()
                .orElseThrow();
        assertThat(Math.abs(reached - share)).isCloseTo(nearest, within(1e-9));
    }

    private static double shareUnder(ValueField field, double border) {
        long below = 0;
        for (float sample : field.luminance()) {
            below += sample < border ? 1 : 0;
        }
        return (double) below / field.luminance().length;
    }

    @Test
    void partsTheEndsOfTheScale() {
        ValueField field = Fields.noise(20, 20, 1);
        assertThat(Values.splitForShare(field, 0)).isZero();
        assertThat(Values.splitForShare(field, 1)).isEqualTo(10);
        float[] one = new float[100];
        Arrays.fill(one, 0.3f);
        ValueField flat = new ValueField(10, 10, one);
        assertThat(Values.splitForShare(flat, 0.2)).isZero();
        assertThat(Values.splitForShare(flat, 0.8)).isEqualTo(10);
    }
}
