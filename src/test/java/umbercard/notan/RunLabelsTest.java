package umbercard.notan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class RunLabelsTest {

    /** Counted again by filling from place to place. */
    @Property(seed = "1", tries = 200)
    void placesThatHangTogetherAreOne(@ForAll long seed) {
        Random random = new Random(seed);
        int rows = 1 + random.nextInt(12);
        int columns = 1 + random.nextInt(140);
        int[][] values = new int[rows][columns];
        double share = random.nextDouble();
        for (int[] row : values) {
            int from = random.nextInt(columns);
            int to = random.nextInt(10) == 0 ? from : from + 1 + random.nextInt(columns - from);
            int value = 1;
            for (int i = from; i < to; i++) {
                value = random.nextInt(4) > 0 ? value : random.nextDouble() < share ? 1 : 2;
                row[i] = value;
            }
        }
        int least = 1 + random.nextInt(6);

        RunLabels labels = new RunLabels();
        for (int[] row : values) {
            long[] frame = new long[columns / 64 + 1];
            long[] dark = new long[columns / 64 + 1];
            for (int i = 0; i < columns; i++) {
                frame[i / 64] |= row[i] > 0 ? 1L << i : 0;
                dark[i / 64] |= row[i] == 2 ? 1L << i : 0;
            }
            labels.addRow(frame, dark);
        }

        MassCounts expected = new MassCounts(filled(values, 2, least), filled(values, 1, least));
        assertThat(labels.counts(least)).isEqualTo(expected);
    }

    private static int filled(int[][] values, int value, int least) {
        boolean[][] seen = new boolean[values.length][values[0].length];
        int count = 0;
        for (int row = 0; row < values.length; row++) {
            for (int column = 0; column < values[row].length; column++) {
                count += fill(values, value, seen, row, column) >= least ? 1 : 0;
            }
        }
        return count;
    }

    private static int fill(int[][] values, int value, boolean[][] seen, int row, int column) {
        Deque<int[]> open = new ArrayDeque<>();
        open.push(new int[] {row, column});
        int size = 0;
        while (!open.isEmpty()) {
            int[] at = open.pop();
            int r = at[0];
            int c = at[1];
            boolean within = r >= 0 && c >= 0 && r < values.length && c < values[0].length;
            if (within && !seen[r][c] && values[r][c] == value) {
                seen[r][c] = true;
                size++;
                open.push(new int[] {r - 1, c});
                open.push(new int[] {r + 1, c});
                open.push(new int[] {r, c - 1});
                open.push(new int[] {r, c + 1});
            }
        }
        return size;
    }
}
