package umbercard.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.junit.jupiter.api.Test;
import umbercard.door.Edit;
import umbercard.model.ColorNote;
import umbercard.model.Study;
import umbercard.model.Zone;
import umbercard.model.edit.Sticks;
import umbercard.notes.order.Arranging;
import umbercard.words.Message;
import umbercard.words.Words;
import umbercard.zones.ZoneMap;

/** Kiln Hill from no notes to a full card, by matching, turning the sky over and arranging; then the trial of it. */
@SuppressWarnings("deprecation") // the robot knows only the old masks of InputEvent
class FullCardIT extends AtDesk {
    @Test
    void kilnHillGetsAFullCardFromNothing() {
        choose("Study", Words.say("desk.menu.kiln-hill"));
        until("the photograph is there", () -> desk().session().photograph().isPresent());
        emptyTheCard();

        choose("Color notes", "strips for the zones…");
        offered("notes.offers.take");
        shots("matches");
        window().button("notes.offers.take").click();
        int matched = study().notes().size();
        assertThat(matched).isBetween(9, 13);
        assertThat(study().setOut())
                .containsAll(study().notes().stream().map(ColorNote::stick).toList());

        choose("Color notes", "turn the sky over…");
        offered("notes.offers.take");
        shots("turned");
        window().button("notes.offers.take").click();
        assertThat(study().notes()).hasSizeBetween(12, 16).hasSizeGreaterThan(matched);

        Study before = study();
        window().button("notes.arrange").click();
        offered("notes.arranging.take");
        shots("order");
        window().button("notes.arranging.take").click();
        assertThat(study().notes()).hasSameElementsAs(before.notes()).isNotEqualTo(before.notes());
        assertThat(zonesWithNotes()).hasSizeGreaterThanOrEqualTo(6);
        assertThat(Arranging.of(
                                study(),
                                ZoneMap.of(study(), study().chosenThumbnail().orElseThrow()))
                        .broken())
                .isEmpty();
        shots("full-card");
        lookAtTheTrial();

        for (int i = 0; i < 3; i++) {
            choose("Edit", window().menuItem("undo").target().getText());
        }
        assertThat(study().notes()).isEmpty();
    }

    private void emptyTheCard() {
        window().list("notes.strips").clickItem(0);
        strike(KeyEvent.VK_A, InputEvent.CTRL_MASK);
        strike(KeyEvent.VK_DELETE);
        assertThat(study().notes()).isEmpty();
        act(() -> desk().session().edit(new Edit(Message.of("notes.edit.arrange"), Sticks.setOutOnly(List.of()))));
        window().label("notes.empty").requireVisible();
    }

    private void offered(String take) {
        until(
                "something is offered",
                () -> window().button(take).target().isShowing()
                        && window().button(take).target().isEnabled());
    }

    private Set<String> zonesWithNotes() {
        return study().notes().stream()
                .map(ColorNote::zone)
                .flatMap(Optional::stream)
                .flatMap(id -> study().zone(id).stream())
                .map(Zone::name)
                .collect(Collectors.toSet());
    }

    private void lookAtTheTrial() {
        window().button("notes.trial").click();
        DialogFixture trial = WindowFinder.findDialog("trial").using(robot());
        until("the trial is painted", () -> trial.textBox("trial.told").text().contains("rough guide"));
        shot("trial");
        trial.toggleButton("trial.stage.0").click();
        shot("trial-underpainting");
        robot().pressAndReleaseKey(KeyEvent.VK_ESCAPE);
        until("the trial is closed", () -> !trial.target().isShowing());
    }
}
