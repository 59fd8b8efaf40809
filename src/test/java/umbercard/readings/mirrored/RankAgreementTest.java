package umbercard.readings.mirrored;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.apache.commons.math3.stat.correlation.KendallsCorrelation;
import org.junit.jupiter.api.Test;

class RankAgreementTest {
    @Test
    void theSameOrderIsOneAndTheReverseMinusOne() {
        assertThat(RankAgreement.of(new double[] {0, 1, 2}, new double[] {4, 6, 9}))
                .isEqualTo(1);
        assertThat(RankAgreement.of(new double[] {0, 1, 2}, new double[] {9, 6, 4}))
                .isEqualTo(-1);
        assertThat(RankAgreement.of(new double[] {0, 1, 2}, new double[] {5, 5, 5}))
                .isZero();
    }

    /** Against Apache Commons Math, which gives no number where all are tied. */
    @Property(tries = 300)
    void anotherLibraryFindsTheSame(@ForAll @Size(min = 2, max = 9) @IntRange(min = 0, max = 5) int[] ranks) {
        double[] order = new double[ranks.length];
        double[] other = new double[ranks.length];
        for (int i = 0; i < ranks.length; i++) {
            order[i] = i;
            other[i] = ranks[i];
        }
        double theirs = new KendallsCorrelation().correlation(order, other);
        assertThat(RankAgreement.of(order, other)).isCloseTo(Double.isNaN(theirs) ? 0 : theirs, within(1e-12));
    }
}
