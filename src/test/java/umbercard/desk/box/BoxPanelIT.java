package umbercard.desk.box;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import umbercard.color.Lab;
import umbercard.desk.KilnHill;
import umbercard.desk.session.Session;
import umbercard.model.Stick;
import umbercard.words.Words;

class BoxPanelIT extends OnOpenBox {
    @Override
    Session makeSession() {
        return new Session(KilnHill.study(), Optional.empty());
    }

    private Stick stick(String id) {
        return ask(() -> session().study().box().orElseThrow().sticks().stream()
                .filter(s -> s.id().equals(id))
                .findFirst()
                .orElseThrow());
    }

    private void press(String id) {
        window().button("box.stick." + id).click();
    }

    private String spoken(String id) {
        return ask(() -> window().button("box.stick." + id)
                .target()
                .getAccessibleContext()
                .getAccessibleName());
    }

    @Test
    void pressingDoesWhatThePainterChose() {
        press("s10");
        assertThat(onCard).containsExactly("s10");
        assertThat(setOut()).isEmpty();
        choose("pressing.set-out");
        assertThat(window().label("box.hint").text()).contains("8 to 16");
        press("s12");
        press("s10");
        assertThat(setOut()).containsExactly("s10", "s12");
        assertThat(onCard).containsExactly("s10");
        assertThat(spoken("s10")).contains("set out");
        press("s12");
        assertThat(setOut()).containsExactly("s10");
        assertThat(spoken("s12")).doesNotContain("set out");
        assertThat(ask(() -> session().undoable().map(Words::say).orElse(""))).startsWith("put back ");
        act(session()::undo);
        assertThat(setOut()).containsExactly("s10", "s12");
    }

    @Test
    void theSticksSetOutLieBeforeThePainterByValueAndByHue() {
        choose("pressing.set-out");
        for (String id : List.of("s1", "s3", "s12", "s9", "s15", "s20", "s26", "s31")) {
            press(id);
        }
        choose("set-out");
        assertThat(window().label("box.set-out.title").text()).isEqualTo("8 sticks are set out.");
        shots("set-out");
        press("s12");
        assertThat(setOut()).hasSize(7).doesNotContain("s12");
        assertThat(window().label("box.set-out.title").text()).isEqualTo("7 sticks are set out.");
        choose("by-value");
        window().button("box.stick.s12").requireVisible();
    }

    @Test
    void aStickIsFoundByItsNameItsPlaceOrItsNote() {
        String name = stick("s9").title();
        window().textBox("box.find").enterText(name.substring(0, 4));
        robot().pressAndReleaseKey(KeyEvent.VK_ENTER);
        window().button("box.stick.s9").requireFocused();
        shots("find");
        window().textBox("box.find").setText("b2");
        window().textBox("box.find").focus();
        robot().pressAndReleaseKey(KeyEvent.VK_ENTER);
        String found = ask(() -> String.valueOf(
                robot().finder().find(component -> component.isFocusOwner()).getName()));
        assertThat(stick(found.substring("box.stick.".length())).slot()).contains(new Stick.Slot(2, 2));
    }

    @Test
    void aStickIsPutRightInPlace() {
        choose("pressing.change");
        press("s10");
        shots("form");
        window().textBox("box.form.name").requireText(stick("s10").title()).setText("Kiln peat");
        window().textBox("box.form.place").setText("z9");
        window().textBox("box.form.color").setText("31, 7.5, 17");
        window().comboBox("box.form.hardness").selectItem("hard");
        window().comboBox("box.form.state").selectItem("worn out");
        window().textBox("box.form.note").setText("half left");
        window().button("box.form.keep").click();
        assertThat(stick("s10").name()).contains("Kiln peat");
        assertThat(stick("s10").slot()).contains(new Stick.Slot(26, 9));
        assertThat(stick("s10").color()).isEqualTo(new Lab(31, 7.5, 17));
        assertThat(stick("s10").hardness()).contains(Stick.Hardness.HARD);
        assertThat(stick("s10").state()).isEqualTo(Stick.State.WORN_OUT);
        assertThat(stick("s10").note()).isEqualTo("half left");
        assertThat(spoken("s10")).contains("worn out");
        window().button("box.stick.s10").requireFocused();
        act(session()::undo);
        assertThat(stick("s10").state()).isEqualTo(Stick.State.OWNED);
    }

    @Test
    void whatIsNotTouchedIsNotRounded() {
        act(() -> session().edit(BoxEdits.change(stick("s10").withColor(new Lab(31.2345, 7.001, 17.77)))));
        choose("pressing.change");
        press("s10");
        window().button("box.form.keep").click();
        assertThat(stick("s10").color()).isEqualTo(new Lab(31.2345, 7.001, 17.77));
    }

    @Test
    void whatCannotBeReadIsSaidAndNothingIsLost() {
        choose("pressing.change");
        press("s10");
        Stick before = stick("s10");
        window().textBox("box.form.color").setText("dark brown");
        window().button("box.form.keep").click();
        assertThat(window().label("box.form.told").text()).contains("three numbers");
        window().textBox("box.form.color")
                .requireFocused()
                .requireText("dark brown")
                .setText("#4a3524");
        window().textBox("box.form.place").setText("top left");
        window().button("box.form.keep").click();
        assertThat(window().label("box.form.told").text()).contains("row and a column");
        shots("form-wrong");
        robot().pressAndReleaseKey(KeyEvent.VK_ESCAPE);
        assertThat(stick("s10")).isEqualTo(before);
        assertThat(onCard).isEmpty();
        window().button("box.stick.s10").requireVisible();
    }

    @Test
    void aStickJoinsTheBoxAndLeavesIt() {
        int before = ask(() -> session().study().box().orElseThrow().sticks().size());
        window().button("box.add").click();
        window().textBox("box.form.color").setText("#336699");
        window().button("box.form.keep").click();
        assertThat(window().label("box.form.told").text()).contains("name or a place");
        window().textBox("box.form.name").requireFocused().enterText("Mill blue");
        window().button("box.form.keep").click();
        List<Stick> sticks = ask(() -> session().study().box().orElseThrow().sticks());
        assertThat(sticks).hasSize(before + 1);
        Stick added = sticks.get(before);
        assertThat(added.title()).isEqualTo("Mill blue");
        assertThat(added.color().hex()).isEqualTo("#336699");
        window().button("box.stick." + added.id()).requireFocused();

        choose("pressing.change");
        press(added.id());
        window().button("box.form.remove").click();
        assertThat(ask(() -> session().study().box().orElseThrow().sticks())).hasSize(before);
        act(session()::undo);
        act(session()::undo);
        assertThat(ask(() -> session().study().box().orElseThrow().sticks())).hasSize(before);
    }

    @Test
    void aFormLeftOpenDoesNotGoOverToAnotherStudy() {
        choose("pressing.change");
        press("s10");
        window().textBox("box.form.name").requireVisible();
        act(() -> session().open(KilnHill.study().withTitle("another"), Optional.empty()));
        window().button("box.stick.s10").requireVisible();
        assertThat(ask(() -> robot().finder().findByName("box.form.keep", false).isShowing()))
                .isFalse();
    }
}
