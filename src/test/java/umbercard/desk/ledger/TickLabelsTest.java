package umbercard.desk.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import umbercard.readings.Fraction;

class TickLabelsTest {
    private static int width(String label) {
        return 6 * label.length();
    }

    @Test
    void aLongRuleBearsThemAll() {
        assertThat(TickLabels.clear(560, 2, TickLabelsTest::width)).containsExactlyInAnyOrder(Fraction.values());
    }

    @Test
    void aShortRuleBearsThePlainestFirst() {
        Set<Fraction> labelled = TickLabels.clear(200, 6, TickLabelsTest::width);
        assertThat(labelled).contains(Fraction.HALF, Fraction.THIRD, Fraction.TWO_THIRDS);
        assertThat(labelled).doesNotContain(Fraction.LESSER_PART, Fraction.GREATER_PART);
    }

    @Property(tries = 100, seed = "5")
    void labelsNeverTouch(@ForAll @IntRange(min = 20, max = 900) int length) {
        Set<Fraction> labelled = TickLabels.clear(length, 6, TickLabelsTest::width);
        for (Fraction one : labelled) {
            for (Fraction other : labelled) {
                if (one.share() < other.share()) {
                    double between = (other.share() - one.share()) * length
                            - (width(TickLabels.words(one)) + width(TickLabels.words(other))) / 2.0;
                    assertThat(between).isGreaterThanOrEqualTo(6);
                }
            }
        }
    }
}
