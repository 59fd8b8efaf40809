package umbercard.desk.notes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReorderTest {
    @ParameterizedTest
    @CsvSource({"-80, 0", "0, 0", "22, 0", "24, 1", "60, 1", "91, 2", "184, 4", "900, 4"})
    void theGapIsTheNearestBetweenStrips(int y, int gap) {
        assertThat(Reorder.gapAt(y, 46, 4)).isEqualTo(gap);
    }

    @Property(tries = 100, seed = "7")
    void aStripDroppedIntoAGapStandsBetweenItsNeighbors(
            @ForAll @IntRange(min = 1, max = 9) int strips,
            @ForAll @IntRange(max = 8) int from,
            @ForAll @IntRange(max = 9) int gap) {
        int carried = Math.min(from, strips - 1);
        int into = Math.min(gap, strips);
        List<Integer> order = new ArrayList<>(IntStream.range(0, strips).boxed().toList());
        order.remove((Object) carried);
        order.add(Reorder.placeAfter(carried, into), carried);

        int place = order.indexOf(carried);
        List<Integer> before = order.subList(0, place);
        List<Integer> after = order.subList(place + 1, strips);
        assertThat(before).allMatch(strip -> strip < into);
        assertThat(after).allMatch(strip -> strip >= into || strip > carried);
    }
}
