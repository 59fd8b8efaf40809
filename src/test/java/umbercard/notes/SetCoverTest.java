package umbercard.notes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Beside every set of columns there is. */
class SetCoverTest {
    private static final int ROWS = 9;
    private static final long ENOUGH = 1_000_000;

    private static BitSet bits(int mask) {
        return BitSet.valueOf(new long[] {mask});
    }

    private static int[] columns(Random random) {
        int[] masks = new int[2 + random.nextInt(10)];
        for (int i = 0; i < masks.length; i++) {
            masks[i] = random.nextInt(1 << ROWS) & random.nextInt(1 << ROWS);
        }
        return masks;
    }

    private static SetCover cover(int[] masks, long nodes) {
        return new SetCover(IntStream.of(masks).mapToObj(SetCoverTest::bits).toList(), nodes);
    }

    private static int covered(int[] masks, int set) {
        return IntStream.range(0, masks.length)
                .filter(i -> (set >> i & 1) == 1)
                .reduce(0, (rows, i) -> rows | masks[i]);
    }

    private static int set(List<Integer> places) {
        return places.stream().mapToInt(place -> 1 << place).sum();
    }

    @Property(seed = "5", tries = 2000)
    void theFewestColumnsAreFound(@ForAll Random random) {
        int[] masks = columns(random);
        int rows = covered(masks, (1 << masks.length) - 1);
        int least = IntStream.range(0, 1 << masks.length)
                .filter(set -> covered(masks, set) == rows)
                .map(Integer::bitCount)
                .min()
                .orElseThrow();
        SetCover search = cover(masks, ENOUGH);
        List<Integer> found = search.fewest(bits(rows), least).orElseThrow();
        assertThat(covered(masks, set(found))).isEqualTo(rows);
        assertThat(found).hasSize(least).doesNotHaveDuplicates();
        assertThat(search.fewest(bits(rows), least - 1)).isEmpty();
        assertThat(search.gaveUp()).isFalse();
    }

    @Property(seed = "6", tries = 2000)
    void theHeaviestRowsAreFound(@ForAll Random random) {
        int[] masks = columns(random);
        int count = 1 + random.nextInt(4);
        long[] weights = random.longs(ROWS, 1, 50).toArray();
        long most = IntStream.range(0, 1 << masks.length)
                .filter(set -> Integer.bitCount(set) <= count)
                .mapToLong(set -> weight(covered(masks, set), weights))
                .max()
                .orElseThrow();
        List<Integer> found = cover(masks, ENOUGH).heaviest(bits((1 << ROWS) - 1), count, weights);
        assertThat(found).hasSizeLessThanOrEqualTo(count).doesNotHaveDuplicates();
        assertThat(weight(covered(masks, set(found)), weights)).isEqualTo(most);
    }

    private static long weight(int rows, long[] weights) {
        return bits(rows).stream().mapToLong(row -> weights[row]).sum();
    }

    /** The seven points and seven lines of the Fano plane: any two lines meet, so three cover no more than six or seven points. */
    @Test
    void linesOfAPlaneThatAllMeet() {
        int[] lines = {0b0000111, 0b0011001, 0b1100001, 0b0101010, 0b1010010, 0b1001100, 0b0110100};
        assertThat(cover(lines, ENOUGH).fewest(bits(127), 7).orElseThrow()).hasSize(3);
    }

    @Test
    void nothingToCoverNeedsNothingAndWhatNoColumnHasCannotBeCovered() {
        int[] masks = {0b11, 0b110};
        assertThat(cover(masks, ENOUGH).fewest(new BitSet(), 0)).contains(List.of());
        assertThat(cover(masks, ENOUGH).fewest(bits(0b1000), 2)).isEmpty();
    }

    @Test
    void itGivesUpAtTheLimitAndSaysSo() {
        List<BitSet> pairs = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            for (int j = 0; j < i; j++) {
                BitSet pair = new BitSet();
                pair.set(i);
                pair.set(j);
                pairs.add(pair);
            }
        }
        BitSet rows = new BitSet();
        rows.set(0, 29);
        SetCover search = new SetCover(pairs, 10);
        assertThat(search.fewest(rows, 20)).isEqualTo(Optional.empty());
        assertThat(search.gaveUp()).isTrue();
    }
}
