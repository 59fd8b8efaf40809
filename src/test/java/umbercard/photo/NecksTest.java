package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import umbercard.photo.Masses.Limits;

class NecksTest {
    private static final Limits ALL = new Limits(Integer.MAX_VALUE, 0);

    /** Two dark squares, joined by a bar that wide. */
    private static Lattice barbell(double bar) {
        return lattice((x, y) -> Math.abs(Math.abs(x - 0.75) - 0.4) < 0.2 && Math.abs(y - 0.5) < 0.2
                || Math.abs(x - 0.75) < 0.4 && Math.abs(y - 0.5) < bar / 2);
    }

    private interface Inside {
        boolean at(double x, double y);
    }

    private static Lattice lattice(Inside dark) {
        DoubleBinaryOperator luminance = (x, y) -> dark.at(x, y) ? 0.1 : 0.9;
        return new Lattice(Fields.of(600, 400, luminance), 1.5);
    }

    private static int masses(Lattice lattice) {
        return Masses.of(Necks.without(lattice, 0.5), 0.5, ALL).count();
    }

    @Test
    void partsWhatOnlyAHairJoins() {
        assertThat(Masses.of(barbell(0.006), 0.5, ALL).count()).isEqualTo(2);
        assertThat(masses(barbell(0.006))).isEqualTo(3);
        assertThat(masses(barbell(0.03))).isEqualTo(2);
    }

    @Test
    void joinsWhatOnlyAHairParts() {
        Lattice parted = lattice((x, y) -> Math.abs(x - 0.75) > 0.003);
        assertThat(Masses.of(parted, 0.5, ALL).count()).isEqualTo(3);
        assertThat(masses(parted)).isEqualTo(1);
    }

    @Test
    void leavesWideMassesAsTheyAreToTheFrameItself() {
        Lattice half = lattice((x, y) -> y > 0.6);
        Lattice same = Necks.without(half, 0.5);
        for (int node = 0; node < half.size(); node++) {
            assertThat(same.sample(node)).isEqualTo(half.sample(node));
        }
    }

    @Test
    void mirrorsAboutTheSplitWhatChangesSides() {
        Lattice lattice = lattice((x, y) -> Math.abs(x - 0.75) < 0.003);
        Lattice without = Necks.without(lattice, 0.4);
        int changed = 0;
        for (int node = 0; node < lattice.size(); node++) {
            if (lattice.sample(node) < 0.4) {
                assertThat(without.sample(node)).isEqualTo((float) (0.8 - lattice.sample(node)));
                changed++;
            }
        }
        assertThat(changed).isPositive();
    }
}
