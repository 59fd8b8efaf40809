package umbercard.desk.box;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import umbercard.color.Lab;
import umbercard.desk.KilnHill;
import umbercard.desk.box.TrayLayout.Cell;
import umbercard.model.Stick;

class TrayLayoutTest {
    private static Stick stick(String id, double l, double a, double b) {
        return new Stick(id, id, new Stick.Slot(1, 1), new Lab(l, a, b));
    }

    private static Cell cellOf(TrayLayout layout, String id) {
        return layout.cells().stream()
                .filter(cell -> cell.stick().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Property(tries = 60, seed = "11")
    void everyStickHasACellOfItsOwnWithinTheColumns(
            @ForAll @IntRange(min = 1, max = 200) int count,
            @ForAll @IntRange(min = 2, max = 14) int most,
            @ForAll boolean asTheyLie) {
        List<Stick> sticks = KilnHill.box(count, 12).sticks();
        TrayLayout layout = asTheyLie ? TrayLayout.asTheyLie(sticks, most) : TrayLayout.byValue(sticks, most);

        assertThat(layout.cells()).extracting(Cell::stick).containsExactlyInAnyOrderElementsOf(sticks);
        assertThat(layout.cells().stream()
                        .map(c -> List.of(c.row(), c.column()))
                        .distinct())
                .hasSize(count);
        assertThat(layout.cells())
                .allMatch(c -> c.column() >= 0 && c.column() < layout.columns() && c.row() < layout.rows());
        assertThat(layout.columns()).isLessThanOrEqualTo(asTheyLie ? 12 : most);
    }

    @Property(tries = 60, seed = "12")
    void rowsRunFromLightToDark(@ForAll @IntRange(min = 2, max = 200) int count) {
        TrayLayout layout = TrayLayout.byValue(KilnHill.box(count, 12).sticks(), 13);
        for (Cell upper : layout.cells()) {
            for (Cell lower : layout.cells()) {
                if (upper.row() < lower.row()) {
                    assertThat(upper.stick().color().value())
                            .isGreaterThanOrEqualTo(lower.stick().color().value());
                }
            }
        }
    }

    @Test
    void graysLieAtTheLeftThenTheHuesFromRedToViolet() {
        List<Stick> sticks = List.of(
                stick("violet", 50, 20, -30),
                stick("red", 50, 40, 20),
                stick("gray", 50, 1, 1),
                stick("green", 50, -30, 20),
                stick("yellow", 50, 0, 40));
        TrayLayout layout = TrayLayout.byValue(sticks, 8);
        assertThat(layout.rows()).isEqualTo(1);
        assertThat(layout.labels()).containsExactly("5");
        assertThat(layout.cells().stream().map(cell -> cell.stick().id()))
                .containsExactly("gray", "red", "yellow", "green", "violet");
        assertThat(layout.cells()).extracting(Cell::column).isSorted();
        assertThat(cellOf(layout, "gray").column()).isZero();
    }

    @Test
    void sticksOfOneHueLieUnderEachOther() {
        List<Stick> sticks = List.of(
                stick("light red", 80, 30, 15),
                stick("light blue", 80, -5, -30),
                stick("dark red", 20, 31, 15),
                stick("dark blue", 20, -5, -31));
        TrayLayout layout = TrayLayout.byValue(sticks, 8);
        assertThat(cellOf(layout, "dark blue").column())
                .isGreaterThan(cellOf(layout, "light red").column());
        assertThat(Math.abs(cellOf(layout, "dark blue").column()
                        - cellOf(layout, "light blue").column()))
                .isLessThanOrEqualTo(1);
    }

    @Test
    void inTheTrayEachStickLiesInItsSlotAndLooseOnesBelow() {
        Stick placed = new Stick("a", "a", new Stick.Slot(2, 3), new Lab(50, 0, 0));
        Stick sameSlot = new Stick("b", "b", new Stick.Slot(2, 3), new Lab(50, 0, 0));
        Stick loose = placed.withId("c").withSlot(Optional.empty());
        TrayLayout layout = TrayLayout.asTheyLie(List.of(placed, sameSlot, loose), 5);
        assertThat(cellOf(layout, "a")).isEqualTo(new Cell(placed, 1, 2));
        assertThat(cellOf(layout, "b")).isEqualTo(new Cell(sameSlot, 2, 0));
        assertThat(cellOf(layout, "c")).isEqualTo(new Cell(loose, 2, 1));
        assertThat(layout.labels()).containsExactly("A", "B", "");
    }

    @Test
    void arrowsLeadToTheNextStickAcrossGaps() {
        List<Stick> sticks = KilnHill.box(36, 6).sticks();
        TrayLayout layout = TrayLayout.asTheyLie(sticks, 8);
        Cell corner = cellOf(layout, "s1");
        assertThat(layout.next(corner, 1, 0).map(c -> c.stick().id())).contains("s2");
        assertThat(layout.next(corner, 0, 1).map(c -> c.stick().id())).contains("s7");
        assertThat(layout.next(corner, -1, 0)).isEmpty();
        assertThat(layout.next(corner, 0, -1)).isEmpty();
    }

    @Test
    void anEmptyBoxHasNoRows() {
        assertThat(TrayLayout.byValue(List.of(), 8).rows()).isZero();
        assertThat(TrayLayout.asTheyLie(List.of(), 8).rows()).isZero();
    }
}
