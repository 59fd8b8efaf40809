package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import umbercard.picture.ValueField;

class CoarseSquintTest {
    @Property(tries = 10, seed = "31")
    void saysTheSameAsTheSquintOfAllPixels(@ForAll @IntRange(min = 14, max = 40) int sigma) {
        ValueField field = Fields.noise(420, 300, sigma);
        ValueField edge = Fields.of(420, 300, (x, y) -> x + 0.3 * y > 0.8 ? 0.9 : 0.05);
        for (ValueField whole : new ValueField[] {field, edge}) {
            ValueField fine = Squinter.squint(whole, sigma);
            ValueField coarse = CoarseSquint.of(whole, sigma);
            assertThat(coarse.height()).isLessThan(140);
            double step = 300.0 / coarse.height();
            double across = 420.0 / coarse.width();
            for (int y = 0; y < coarse.height(); y++) {
                for (int x = 0; x < coarse.width(); x++) {
                    int fineX = (int) ((x + 0.5) * across);
                    int fineY = (int) ((y + 0.5) * step);
                    assertThat(coarse.at(x, y)).isCloseTo(fine.at(fineX, fineY), within(0.02f));
                }
            }
        }
    }

    @Test
    void keepsAFieldThatIsHardlySquinted() {
        ValueField field = Fields.noise(60, 40, 5);
        assertThat(CoarseSquint.of(field, 0)).isSameAs(field);
        assertThat(CoarseSquint.of(field, 2).height()).isEqualTo(40);
    }

    @Test
    void neverTakesMoreRowsThanAThumbnailShows() {
        assertThat(CoarseSquint.of(Fields.noise(30, 900, 6), 0).height()).isEqualTo(400);
    }

    @Property(tries = 20, seed = "32")
    void meansKeepAllLight(
            @ForAll @IntRange(min = 1, max = 23) int columns, @ForAll @IntRange(min = 1, max = 17) int rows) {
        ValueField field = Fields.noise(23, 17, 7);
        ValueField means = CoarseSquint.averaged(field, columns, rows);
        assertThat(mean(means)).isCloseTo(mean(field), within(1e-6));
    }

    @Test
    void aMeanIsOfWhatACellCovers() {
        ValueField means = CoarseSquint.averaged(new ValueField(3, 1, new float[] {0, 0.3f, 0.9f}), 2, 1);
        // (0 + 0.3 / 2) / 1.5 and (0.3 / 2 + 0.9) / 1.5
        assertThat(means.at(0, 0)).isCloseTo(0.1f, within(1e-6f));
        assertThat(means.at(1, 0)).isCloseTo(0.7f, within(1e-6f));
    }

    private static double mean(ValueField field) {
        double sum = 0;
        for (float sample : field.luminance()) {
            sum += sample;
        }
        return sum / field.luminance().length;
    }
}
