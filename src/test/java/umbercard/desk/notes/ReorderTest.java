package umbercard.desk.notes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReorderTest {
    /** Two strips of 46 pixels, a break of 22, one strip more. */
    private static final List<Integer> EDGES = List.of(0, 46, 92, 114, 160);

    @ParameterizedTest
    @CsvSource({"-80, 0", "0, 0", "22, 0", "23, 0", "24, 1", "60, 1", "91, 2", "102, 2", "104, 3", "140, 4", "900, 4"})
    void theGapIsTheNearest(int y, int gap) {
        assertThat(Reorder.gapAt(y, EDGES)).isEqualTo(gap);
    }
}
