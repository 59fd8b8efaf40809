package umbercard.notes;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Covers rows by columns exactly: the fewest columns that cover all rows, or the heaviest rows that a number of columns can
 * cover. The search branches on the row that the fewest columns cover, after leaving out columns whose rows another covers
 * as well and rows that come with another row; rows of which no two share a column bound it (R. S. Garfinkel, G. L.
 * Nemhauser, Integer Programming, 1972, ch. 8, from memory). It looks at a limited number of nodes, so it always ends, and the same
 * way on every machine.
 */
final class SetCover {
    private final List<Column> columns;
    private long left;

    /** A column by its place, and the rows it covers. */
    private record Column(int place, BitSet rows) {}

    /**
     * @param columns the rows that each covers
     * @param nodes how many nodes of the search to look at before giving up
     */
    SetCover(List<BitSet> columns, long nodes) {
        this.columns = IntStream.range(0, columns.size())
                .mapToObj(place -> new Column(place, columns.get(place)))
                .toList();
        this.left = nodes;
    }

    /** Whether it gave up at some time, so that not finding a cover since then does not mean that there is none. */
    boolean gaveUp() {
        return left < 0;
    }

    /** The places of the fewest columns that cover the rows; empty if more than {@code most} are needed, or it gave up. */
    Optional<List<Integer>> fewest(BitSet rows, int most) {
        for (int count = 0; count <= most && !gaveUp(); count++) {
            Optional<List<Integer>> cover = cover(rows, count);
            if (cover.isPresent()) {
                return cover;
            }
        }
        return Optional.empty();
    }

    /** The places of at most so many columns that cover the rows; empty if there are none, or it gave up. */
    Optional<List<Integer>> cover(BitSet rows, int most) {
        return cover(rows, columns, most).map(places -> places.stream().sorted().toList());
    }

    private Optional<List<Integer>> cover(BitSet wanted, List<Column> among, int most) {
        if (wanted.isEmpty()) {
            return Optional.of(List.of());
        }
        if (most == 0 || --left < 0) {
            return Optional.empty();
        }
        List<Column> open = new ArrayList<>(undominated(among, wanted));
        BitSet rows = unimplied(wanted, open);
        if (apart(rows, open) > most) {
            return Optional.empty();
        }
        int row = rarest(rows, open);
        for (Column column : open.stream().filter(one -> one.rows.get(row)).toList()) {
            open.remove(column);
            Optional<List<Integer>> rest = cover(without(rows, column.rows), open, most - 1);
            if (rest.isPresent()) {
                List<Integer> found = new ArrayList<>(rest.get());
                found.add(column.place);
                return Optional.of(found);
            }
        }
        return Optional.empty();
    }

    /** The columns cut to the rows, the longest first, without those whose rows an earlier one has all. */
    private static List<Column> undominated(List<Column> among, BitSet rows) {
        List<Column> cut = among.stream()
                .map(column -> new Column(column.place, both(column.rows, rows)))
                .filter(column -> !column.rows.isEmpty())
                .sorted(Comparator.<Column>comparingInt(column -> -column.rows.cardinality())
                        .thenComparing(Column::place))
                .toList();
        List<Column> kept = new ArrayList<>();
        for (Column column : cut) {
            if (kept.stream().noneMatch(one -> isWithin(column.rows, one.rows))) {
                kept.add(column);
            }
        }
        return kept;
    }

    /** The rows without those that are covered whenever another one is. */
    private static BitSet unimplied(BitSet rows, List<Column> among) {
        BitSet kept = both(rows, rows);
        rows.stream().forEach(row -> {
            BitSet covering = covering(row, among);
            boolean implied = kept.stream()
                    .filter(other -> other != row)
                    .anyMatch(other -> isWithin(covering(other, among), covering));
            kept.set(row, !implied);
        });
        return kept;
    }

    private static BitSet covering(int row, List<Column> among) {
        BitSet covering = new BitSet();
        for (int i = 0; i < among.size(); i++) {
            covering.set(i, among.get(i).rows.get(row));
        }
        return covering;
    }

    /** How many rows are found of which no two share a column: so many columns are needed at least. */
    private static int apart(BitSet rows, List<Column> among) {
        BitSet open = both(rows, rows);
        int found = 0;
        while (!open.isEmpty()) {
            int row = rarest(open, among);
            among.stream().filter(column -> column.rows.get(row)).forEach(column -> open.andNot(column.rows));
            open.clear(row);
            found++;
        }
        return found;
    }

    private static int rarest(BitSet rows, List<Column> among) {
        return rows.stream()
                .boxed()
                .min(Comparator.comparingLong(row ->
                        among.stream().filter(column -> column.rows.get(row)).count()))
                .orElseThrow();
    }

    /**
     * The places of at most so many columns that cover the heaviest rows together; the best found, if it gave up.
     *
     * @param weights of the rows, over 0
     */
    List<Integer> heaviest(BitSet rows, int count, long[] weights) {
        Heaviest best = new Heaviest(weights);
        best.search(rows, undominated(columns, rows), List.of(), 0, count);
        return best.places.stream().sorted().toList();
    }

    private final class Heaviest {
        private final long[] weights;
        private long weight;
        private List<Integer> places = List.of();

        private Heaviest(long[] weights) {
            this.weights = weights;
        }

        private void search(BitSet rows, List<Column> among, List<Integer> chosen, long reached, int count) {
            if (reached > weight) {
                weight = reached;
                places = chosen;
            }
            if (count == 0 || --left < 0) {
                return;
            }
            List<Column> open = among.stream()
                    .map(column -> new Column(column.place, both(column.rows, rows)))
                    .filter(column -> !column.rows.isEmpty())
                    .sorted(Comparator.<Column>comparingLong(column -> -of(column))
                            .thenComparing(Column::place))
                    .toList();
            for (int i = 0; i < open.size() && reached + most(open, i, count) > weight; i++) {
                Column column = open.get(i);
                List<Integer> longer = new ArrayList<>(chosen);
                longer.add(column.place);
                search(
                        without(rows, column.rows),
                        open.subList(i + 1, open.size()),
                        longer,
                        reached + of(column),
                        count - 1);
            }
        }

        private long of(Column column) {
            return column.rows.stream().mapToLong(row -> weights[row]).sum();
        }

        /** What so many columns from a place on add at most. */
        private long most(List<Column> open, int from, int count) {
            return open.stream().skip(from).limit(count).mapToLong(this::of).sum();
        }
    }

    private static boolean isWithin(BitSet some, BitSet all) {
        return without(some, all).isEmpty();
    }

    private static BitSet both(BitSet one, BitSet other) {
        BitSet both = (BitSet) one.clone();
        both.and(other);
        return both;
    }

    private static BitSet without(BitSet some, BitSet others) {
        BitSet without = (BitSet) some.clone();
        without.andNot(others);
        return without;
    }
}
