package umbercard.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import umbercard.color.Lab;
import umbercard.model.Stick;
import umbercard.model.Stick.Slot;

class StickIdsTest {
    private static Stick stick(String id, String name, int row, int column, int rgb) {
        return new Stick(
                id,
                Optional.of(name).filter(n -> !n.isEmpty()),
                Optional.of(row).filter(r -> r > 0).map(r -> new Slot(r, column)),
                Lab.ofSrgb(rgb),
                Optional.empty(),
                Stick.State.OWNED,
                "",
                Map.of());
    }

    private static List<String> ids(List<Stick> sticks) {
        return StickIds.complete(sticks).stream().map(Stick::id).toList();
    }

    @Test
    void nameComesBeforePlaceAndPlaceBeforeColor() {
        assertThat(ids(List.of(
                        stick("", "Wet slate!", 1, 1, 1),
                        stick("", "", 2, 3, 0x7a5c48),
                        stick("", "", 0, 0, 0x7a5c48),
                        stick("", "!!", 0, 0, 0x7a5c49),
                        stick("", "Caf\u00e9 \u96ea", 0, 0, 0))))
                .containsExactly("wet-slate", "b3", "7a5c48", "7a5c49", "caf\u00e9-\u96ea");
    }

    @Test
    void ofTheSameNameTheLaterOnesTakeTheirPlaceAlongOrANumber() {
        assertThat(ids(List.of(
                        stick("", "Slate", 1, 1, 1),
                        stick("", "Slate", 2, 3, 2),
                        stick("", "slate", 2, 3, 3),
                        stick("", "Slate", 0, 0, 4),
                        stick("", "", 0, 0, 5),
                        stick("", "", 0, 0, 5))))
                .containsExactly("slate", "slate-b3", "slate-2", "slate-3", "000005", "000005-2");
    }

    @Test
    void thoseGivenStayAndAreNotTakenByOthers() {
        assertThat(ids(List.of(
                        stick("", "Slate", 0, 0, 1), stick("slate", "Peat", 0, 0, 2), stick("slate-2", "", 0, 0, 3))))
                .containsExactly("slate-3", "slate", "slate-2");
    }

    @Test
    void whereNamesDifferTheOrderDoesNotMatter() {
        List<Stick> sticks = new ArrayList<>();
        for (int i = 0; i < 50; i++) {
            sticks.add(stick("", i % 2 == 0 ? "Stick " + i : "", 1 + i / 10, 1 + i % 10, i));
        }
        List<Stick> once = StickIds.complete(sticks);
        Collections.reverse(sticks);
        assertThat(StickIds.complete(sticks)).containsExactlyInAnyOrderElementsOf(once);
    }
}
