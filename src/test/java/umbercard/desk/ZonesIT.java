package umbercard.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.assertj.swing.core.MouseButton;
import org.junit.jupiter.api.Test;
import umbercard.geometry.Region;
import umbercard.model.LostEdge;
import umbercard.model.Zone;
import umbercard.words.Words;

/** Zones outlined, taken from a mass, proposed, changed and lost, by pointer and keyboard. */
class ZonesIT extends AtDesk {
    private double area(String zone) {
        return Region.of(thumbnail().zoneAreas().getOrDefault(zone, List.of())).area();
    }

    private String undoable() {
        return ask(() -> desk().session().undoable().map(Words::say).orElse("nothing"));
    }

    private Zone zone(String id) {
        return study().zone(id).orElseThrow();
    }

    private void kilnHill() {
        choose("Study", Words.say("desk.menu.kiln-hill"));
        until("the photograph is there", () -> desk().session().photograph().isPresent());
        settled();
    }

    private void openZones() {
        kilnHill();
        window().button("notes.zones").click();
        window().comboBox("zones.choice").requireFocused();
    }

    @Test
    void aZoneIsOutlinedByItsCornersAndAMassTakenWithOneClick() {
        kilnHill();
        int before = study().zones().size();
        strike(KeyEvent.VK_Z);
        clickCorners(0.4, 0.5, 0.6, 0.5, 0.6, 0.7, 0.4, 0.7, 0.4, 0.5);
        assertThat(study().zones()).hasSize(before + 1);
        Zone drawn = study().zones().get(before);
        assertThat(drawn.name()).isEqualTo("zone 1");
        assertThat(area(drawn.id())).isEqualTo(0.04, within(0.005));
        assertThat(undoable()).isEqualTo("new zone 1");
        shots("outlined");

        robot().click(card(), at(0.05, 0.95), MouseButton.RIGHT_BUTTON, 1);
        assertThat(study().zones()).hasSize(before + 2);
        assertThat(undoable()).isEqualTo("new zone 2");
        assertThat(area(study().zones().get(before + 1).id())).isGreaterThan(0.05);
        act(() -> desk().session().undo());
        act(() -> desk().session().undo());
        assertThat(study().zones()).hasSize(before);
    }

    @Test
    void aZoneIsChangedOnItsPageAndOutlinesAreItsArea() {
        openZones();
        window().comboBox("zones.choice").selectItem("kiln");
        until(
                "the kiln is told of",
                () -> window().textBox("zones.facts").text().startsWith("It takes up"));
        shots("page");
        assertThat(window().textBox("zones.facts").text()).contains("dark on the notan");
        window().comboBox("zones.field.distance").selectItem("near");
        assertThat(zone("z4").distance()).isEqualTo(Zone.Distance.NEAR);
        assertThat(undoable()).isEqualTo("change distance of kiln");
        type(window().textBox("zones.field.name"), "old kiln");
        strike(KeyEvent.VK_ENTER);
        assertThat(zone("z4").name()).isEqualTo("old kiln");
        type(window().textBox("zones.field.target"), "much");
        strike(KeyEvent.VK_ENTER);
        assertThat(zone("z4").targetValue()).isEqualTo(OptionalDouble.of(2));
        type(window().textBox("zones.field.target"), "1.5");
        strike(KeyEvent.VK_ENTER);
        assertThat(zone("z4").targetValue()).isEqualTo(OptionalDouble.of(1.5));

        double before = area("z4");
        window().button("zones.word.clear").click();
        assertThat(area("z4")).isZero();
        act(() -> desk().session().undo());
        assertThat(area("z4")).isEqualTo(before);
        window().toggleButton("instrument-zone").click();
        clickCorners(0.6, 0.05, 0.7, 0.05, 0.7, 0.15, 0.6, 0.15, 0.6, 0.05);
        assertThat(undoable()).isEqualTo("outline old kiln");
        assertThat(area("z4")).isEqualTo(before + 0.01, within(0.002));
    }

    @Test
    void anEdgeIsLostAndAZoneRemoved() {
        openZones();
        window().comboBox("zones.choice").selectItem("kiln");
        until(
                "its neighbor is there",
                () -> !robot().finder()
                        .findAll(desk(), found -> "zones.edge.z3".equals(found.getName()))
                        .isEmpty());
        window().checkBox("zones.edge.z3").click();
        assertThat(study().lostEdges()).contains(new LostEdge("z3", "z4"));
        window().button("zones.word.remove").click();
        assertThat(study().zone("z4")).isEmpty();
        assertThat(study().notes().get(0).zone()).isEqualTo(Optional.empty());
        act(() -> desk().session().undo());
        assertThat(zone("z4").name()).isEqualTo("kiln");
    }

    @Test
    void zonesAreProposedForWhatNoneCovers() {
        openZones();
        while (!study().zones().isEmpty()) {
            window().button("zones.word.remove").click();
            act(() -> {
                if (!desk().session().study().zones().isEmpty()) {
                    window().comboBox("zones.choice").target().setSelectedIndex(0);
                }
            });
        }
        window().button("zones.word.propose").click();
        until("zones are proposed", () -> !study().zones().isEmpty());
        assertThat(study().zones()).extracting(Zone::name).contains("sky", "water");
        assertThat(undoable()).isEqualTo("propose zones");
        until(
                "the frame is covered",
                () -> window().textBox("zones.gaps").text().contains("No zone covers"));
        shots("proposed");
        strike(KeyEvent.VK_ESCAPE);
        window().list("notes.strips").requireFocused();
    }
}
