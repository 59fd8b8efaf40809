package umbercard.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class BernsteinTest {
    @Test
    void everyChangeOfSignIsFound() {
        // (t − 1/8)(t − 1/2)(t − 3/4) has the Bernstein coefficients −3/64, 25/192, −29/192, 7/64.
        List<Double> zeros = new Bernstein(-3.0 / 64, 25.0 / 192, -29.0 / 192, 7.0 / 64).zeros();

        assertThat(zeros).hasSize(3);
        assertThat(zeros.get(0)).isCloseTo(.125, within(1e-15));
        assertThat(zeros.get(1)).isCloseTo(.5, within(1e-15));
        assertThat(zeros.get(2)).isCloseTo(.75, within(1e-15));
    }

    @Test
    void whatKeepsItsSignHasNone() {
        assertThat(new Bernstein(1, 2, 1, 2).zeros()).isEmpty();
        assertThat(new Bernstein(0, 0, 0, 0).zeros()).isEmpty();
        assertThat(new Bernstein(-1, -1, -1, -2).zeros()).isEmpty();
    }

    @Property(seed = "38")
    void valuesBetweenZerosKeepTheirSign(@ForAll long seed) {
        Random random = new Random(seed);
        Bernstein cubic = new Bernstein(
                random.nextGaussian(), random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
        List<Double> zeros = cubic.zeros();
        int changes = 0;
        for (int i = 1; i <= 4000; i++) {
            changes += cubic.at((i - 1) / 4000.0) <= 0 != cubic.at(i / 4000.0) <= 0 ? 1 : 0;
        }
        assertThat(zeros).hasSizeGreaterThanOrEqualTo(changes);
        assertThat(zeros.size() % 2).isEqualTo(changes % 2);
        zeros.forEach(t -> assertThat(cubic.at(t)).isCloseTo(0, within(1e-14)));
    }
}
