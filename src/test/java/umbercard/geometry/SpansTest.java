package umbercard.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.BitSet;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class SpansTest {
    private static final int CELLS = 40;

    private static Spans of(double... ends) {
        Spans spans = new Spans();
        for (int i = 0; i < ends.length; i += 2) {
            spans.add(ends[i], ends[i + 1]);
        }
        return spans;
    }

    /** Stretches with whole ends, from a set of unit cells. */
    private static Spans of(BitSet cells) {
        Spans spans = new Spans();
        for (int from = cells.nextSetBit(0); from >= 0; from = cells.nextSetBit(cells.nextClearBit(from))) {
            spans.add(from, cells.nextClearBit(from));
        }
        return spans;
    }

    private static void same(Spans spans, BitSet cells) {
        assertThat(spans).isEqualTo(of(cells));
        assertThat(spans.length()).isEqualTo(cells.cardinality());
        for (int i = 1; i < spans.size(); i++) {
            assertThat(spans.from(i)).as("a gap before stretch %s", i).isGreaterThan(spans.to(i - 1));
        }
        for (int i = 0; i < spans.size(); i++) {
            assertThat(spans.to(i)).isGreaterThan(spans.from(i));
        }
    }

    /** Whole ends make stretches touch and coincide all the time. */
    @Property(seed = "1")
    void addingAndRemovingAreThoseOfSets(@ForAll long seed) {
        Random random = new Random(seed);
        Spans spans = new Spans();
        Spans other = new Spans();
        BitSet cells = new BitSet();
        BitSet otherCells = new BitSet();
        for (int i = 0; i < 60; i++) {
            int from = random.nextInt(CELLS);
            int to = Math.min(CELLS, from + random.nextInt(9));
            switch (random.nextInt(6)) {
                case 0, 1 -> {
                    spans.add(from, to);
                    cells.set(from, to);
                }
                case 2 -> {
                    spans.remove(from, to);
                    cells.clear(from, to);
                }
                case 3 -> {
                    other.add(from, to);
                    otherCells.set(from, to);
                }
                case 4 -> {
                    spans.add(other);
                    cells.or(otherCells);
                    other.clear();
                    otherCells.clear();
                }
                default -> {
                    spans.remove(other);
                    cells.andNot(otherCells);
                }
            }
            same(spans, cells);
            same(other, otherCells);
            assertThat(from == to || spans.covers(from, to) == (cells.nextClearBit(from) >= to))
                    .isTrue();
        }
    }

    @Test
    void whatHasNoLengthIsNothing() {
        Spans spans = of(1, 2);
        spans.add(3, 3);
        spans.add(5, 4);
        spans.remove(1.5, 1.5);

        assertThat(spans).isEqualTo(of(1, 2)).hasSameHashCodeAs(of(1, 2));
    }

    @Test
    void aCopyGoesItsOwnWay() {
        Spans spans = of(0, 1, 2, 3, 4, 5, 6, 7, 8, 9);
        Spans copy = new Spans();
        copy.set(spans);
        copy.remove(0, 20);

        assertThat(copy.size()).isZero();
        assertThat(spans.length()).isEqualTo(5);
    }
}
