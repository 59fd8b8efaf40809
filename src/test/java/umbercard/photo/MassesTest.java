package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayDeque;
import java.util.Deque;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import umbercard.photo.Masses.Limits;
import umbercard.picture.ValueField;

class MassesTest {
    private static final Limits ALL = new Limits(Integer.MAX_VALUE, 0);

    @Property(tries = 40, seed = "41")
    void countsAsAFloodOfTheNodesDoes(@ForAll @IntRange(max = 100_000) int seed) {
        Lattice lattice = new Lattice(Fields.noise(11, 9, seed), 1.3);
        Masses masses = Masses.of(lattice, 0.5, ALL);
        assertThat(masses.count()).isEqualTo(flooded(lattice));
        boolean[] dark = masses.dark();
        for (int node = 0; node < dark.length; node++) {
            assertThat(dark[node]).isEqualTo(lattice.sample(node) < 0.5);
        }
    }

    /** The connected regions, one node after the other; where two darks meet two lights the middle decides. */
    private static int flooded(Lattice lattice) {
        boolean[] seen = new boolean[lattice.size()];
        int count = 0;
        for (int first = 0; first < seen.length; first++) {
            if (!seen[first]) {
                count++;
                Deque<Integer> waiting = new ArrayDeque<>();
                waiting.add(first);
                seen[first] = true;
                while (!waiting.isEmpty()) {
                    int node = waiting.remove();
                    for (int way = 0; way < 9; way++) {
                        int other = beside(lattice, node, way % 3 - 1, way / 3 - 1);
                        if (other >= 0 && !seen[other]) {
                            seen[other] = true;
                            waiting.add(other);
                        }
                    }
                }
            }
        }
        return count;
    }

    /** The node there if it is connected with this one within their cell, else -1. */
    private static int beside(Lattice lattice, int node, int right, int down) {
        int columns = lattice.columns();
        int c = node % columns + right;
        int r = node / columns + down;
        if (c < 0 || r < 0 || c >= columns || r >= lattice.rows()) {
            return -1;
        }
        int other = r * columns + c;
        boolean dark = lattice.sample(node) < 0.5;
        if (lattice.sample(other) < 0.5 != dark) {
            return -1;
        }
        if (right == 0 || down == 0) {
            return other;
        }
        int corner = Math.min(node % columns, c) + Math.min(node / columns, r) * columns;
        return lattice.middleBelow(corner, 0.5) == dark ? other : -1;
    }

    @Property(tries = 30, seed = "42")
    void leavesNoMoreThanTheLimitsAllow(
            @ForAll @IntRange(max = 100_000) int seed, @ForAll @IntRange(min = 1, max = 9) int most) {
        Lattice lattice = new Lattice(Fields.noise(40, 30, seed), 4.0 / 3);
        Masses masses = Masses.of(lattice, 0.45, new Limits(most, 0));
        assertThat(masses.count()).isLessThanOrEqualTo(most);
        boolean[] dark = masses.dark();
        int inside = 0;
        for (int node = 0; node < dark.length; node++) {
            inside += dark[node] && !lattice.onBorder(node) ? 1 : 0;
        }
        assertThat(masses.darkShare()).isCloseTo(inside / 1200.0, within(1e-9));
    }

    @Test
    void aSliverGivesInHoweverLongItIs() {
        // A dark strip along the frame, a hundredth of its height thick, and a disc of the same area.
        double radius = Math.sqrt(0.01 * 1.5 / Math.PI);
        ValueField field = Fields.of(600, 400, (x, y) -> y > 0.99 || Math.hypot(x - 0.7, y - 0.5) < radius ? 0.1 : 0.9);
        Masses masses = Masses.of(new Lattice(field, 1.5), 0.5, new Limits(9, 0.005 * 1.5));
        assertThat(masses.count()).isEqualTo(2);
        assertThat(masses.darkShare()).isCloseTo(0.01, within(2e-4));
    }

    @Test
    void aMassThatGivesInJoinsAllThatItParted() {
        // Light, dark, light: three bands, the dark one the least.
        ValueField field = Fields.of(60, 40, (x, y) -> Math.abs(y - 0.5) < 0.1 ? 0.1 : 0.9);
        Masses masses = Masses.of(new Lattice(field, 1.5), 0.5, new Limits(2, 0));
        assertThat(masses.count()).isEqualTo(1);
        assertThat(masses.darkShare()).isZero();
    }
}
