package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import umbercard.color.MunsellValue;
import umbercard.color.Srgb;
import umbercard.picture.ValueField;

class ValueCurveTest {
    /** As much of each value from 0 to 10 (ASTM D1535). */
    private static ValueField even() {
        return Fields.of(2000, 1, (x, y) -> MunsellValue.luminance(10 * x / 2000));
    }

    @Test
    void anEvenScaleIsAStraightLine() {
        ValueCurve curve = ValueCurve.of(even());
        for (double value = 0; value <= 10; value += 0.25) {
            assertThat(curve.shareBelow(value)).isCloseTo(value / 10, within(1e-3));
            assertThat(curve.valueFor(value / 10)).isCloseTo(value, within(1e-2));
        }
        assertThat(curve.otsu()).isCloseTo(5, within(0.02));
    }

    @Property(tries = 40, seed = "5")
    void isNearTheShareCounted(@ForAll @DoubleRange(min = 0, max = 10) double value, @ForAll long seed) {
        ValueField field = Fields.smooth(120, 90, seed);
        // Between two levels a fiftieth of a value apart the curve is straight, which the field need not be.
        double lower = Values.shareBelow(field, value - 0.02);
        double upper = Values.shareBelow(field, value + 0.02);
        assertThat(ValueCurve.of(field).shareBelow(value)).isBetween(lower - 1e-9, upper + 1e-9);
    }

    @Property(tries = 40, seed = "5")
    void theValueForAShareIsBelowWhatHasIt(@ForAll @DoubleRange(min = 0, max = 1) double share, @ForAll long seed) {
        ValueCurve curve = ValueCurve.of(Fields.smooth(80, 60, seed));
        assertThat(curve.shareBelow(curve.valueFor(share))).isCloseTo(share, within(1e-9));
    }

    @Test
    void aJumpIsReachedAtItsFoot() {
        ValueCurve curve = ValueCurve.of(Fields.of(10, 1, (x, y) -> MunsellValue.luminance(x < 4 ? 3.005 : 7.005)));
        assertThat(curve.valueFor(0.4)).isCloseTo(3, within(0.03));
        assertThat(curve.valueFor(0.41)).isCloseTo(7, within(0.03));
        assertThat(curve.shareBelow(5)).isCloseTo(0.4, within(1e-12));
    }

    @Property(tries = 40, seed = "8")
    void moreValuesRefineFewer(
            @ForAll @IntRange(min = 2, max = 4) int count,
            @ForAll @DoubleRange(min = 1, max = 9) double split,
            @ForAll long seed) {
        ValueCurve curve = ValueCurve.of(Fields.smooth(80, 60, seed));
        ValueSteps few = curve.steps(count, split);
        ValueSteps more = curve.steps(count + 1, split);
        assertThat(few.borders()).contains(split).isSorted();
        assertThat(few.values()).hasSize(count).isSorted();
        assertThat(more.borders()).hasSize(count).containsAll(few.borders());
        for (int i = 0; i < few.borders().size(); i++) {
            assertThat(few.borders().get(i))
                    .isBetween(few.values().get(i) - 0.02, few.values().get(i + 1) + 0.02);
        }
    }

    @Test
    void fourGraysAreParted() {
        int[] grays = {0x202020, 0x606060, 0x909090, 0xe0e0e0};
        ValueField field = Values.of(Photographs.picture(8, 1, (x, y) -> grays[x / 2]));
        ValueCurve curve = ValueCurve.of(field);
        ValueSteps steps = curve.steps(4, curve.otsu());
        int[] seen = Values.inSteps(field, steps).pixels();
        for (int i = 0; i < 8; i++) {
            double value = MunsellValue.ofLuminance(Srgb.luminance(seen[i]));
            assertThat(value).isCloseTo(MunsellValue.ofLuminance(Srgb.luminance(grays[i / 2])), within(0.05));
        }
        assertThat(curve.steps(5, curve.otsu()).values())
                .as("nothing is left to part")
                .hasSize(4);
    }

    @Test
    void eachStepIsSeenInItsMeanValue() {
        ValueField field = even();
        ValueSteps steps = ValueCurve.of(field).steps(4, 5);
        assertThat(steps.borders()).hasSize(3);
        assertThat(steps.borders().get(0)).isCloseTo(2.5, within(0.03));
        assertThat(steps.borders().get(2)).isCloseTo(7.5, within(0.03));
        assertThat(steps.values().get(0)).isCloseTo(1.25, within(0.03));
        assertThat(IntStream.of(Values.inSteps(field, steps).pixels())
                        .distinct()
                        .count())
                .isEqualTo(4);
    }
}
