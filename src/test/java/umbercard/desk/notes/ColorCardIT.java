package umbercard.desk.notes;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.awt.Point;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.assertj.swing.core.GenericTypeMatcher;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.fixture.JListFixture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import umbercard.desk.KilnHill;
import umbercard.desk.OnDesk;
import umbercard.desk.session.Session;
import umbercard.desk.theme.Theme;
import umbercard.model.ColorNote;
import umbercard.model.ColorNote.Touch;
import umbercard.model.Stick;
import umbercard.model.Zone;
import umbercard.words.Words;

@SuppressWarnings("deprecation") // the robot knows only the old masks of InputEvent
class ColorCardIT extends OnDesk {
    private final List<String> opened = new ArrayList<>();
    private Session session;
    private ColorCard card;

    @Override
    protected Dimension windowSize() {
        return new Dimension(464, 532);
    }

    @Override
    protected JFrame makeWindow() {
        Theme.install(false);
        session = new Session(KilnHill.study(), Optional.empty());
        card = new ColorCard(session, () -> opened.add("box file"));
        JFrame frame = new JFrame("color card");
        JPanel desk = new JPanel(new MigLayout("insets 16", "[grow,fill]", "[grow,fill]"));
        desk.add(card);
        frame.setContentPane(desk);
        return frame;
    }

    private JListFixture strips() {
        return window().list("notes.strips");
    }

    private int pitch() {
        return ask(() -> strips().target().getCellBounds(0, 0).height);
    }

    private List<String> ids() {
        return ask(() -> session.study().notes().stream().map(ColorNote::id).toList());
    }

    private ColorNote note(String id) {
        return ask(() -> session.study().notes().stream()
                .filter(n -> n.id().equals(id))
                .findFirst()
                .orElseThrow());
    }

    private String undoable() {
        return ask(() -> session.undoable().map(Words::say).orElse("nothing"));
    }

    private void undo() {
        act(session::undo);
    }

    @Test
    void sticksArePickedFromTheBoxByPointerAndByKeys() {
        strips().clickItem(1);
        window().button("notes.open-box").click();
        window().button("box.stick.s10").click();
        assertThat(ids()).containsExactly("n1", "n2", "n3", "n4", "n5");
        assertThat(note("n5").stick().id()).isEqualTo("s10");
        assertThat(note("n5").zone()).contains("z2");
        assertThat(window().label("box.hint").text()).contains("on the card as 5");

        window().toggleButton("box.tray").click();
        window().button("box.stick.s10").focus();
        robot().pressAndReleaseKey(KeyEvent.VK_RIGHT);
        robot().pressAndReleaseKey(KeyEvent.VK_DOWN);
        window().button("box.stick.s17").requireFocused();
        robot().pressAndReleaseKey(KeyEvent.VK_SPACE);
        robot().pressAndReleaseKey(KeyEvent.VK_ENTER);
        assertThat(ids()).hasSize(7);
        assertThat(note("n7").stick().id()).isEqualTo("s17");
        shots("box-tray");

        robot().pressAndReleaseKey(KeyEvent.VK_ESCAPE);
        assertThat(ask(card::isBoxOpen)).isFalse();
        strips().requireFocused();
        assertThat(undoable()).startsWith("add ");
        undo();
        undo();
        undo();
        assertThat(ids()).containsExactly("n1", "n2", "n3", "n4");
    }

    @Test
    void everyStickIsATargetOfTwentyFourPixelsInsideTheBox() {
        window().button("notes.open-box").click();
        shots("box");
        for (Stick stick : ask(() -> session.study().box().orElseThrow().sticks())) {
            Dimension size = ask(
                    () -> window().button("box.stick." + stick.id()).target().getSize());
            assertThat(Math.min(size.width, size.height)).isGreaterThanOrEqualTo(24);
        }
    }

    @Test
    void aStripIsDraggedIntoPlace() {
        int pitch = pitch();
        drag(
                strips().target(),
                MouseButton.LEFT_BUTTON,
                List.of(new Point(60, 20), new Point(60, 60), new Point(60, 2 * pitch + 10)));
        assertThat(ids()).containsExactly("n2", "n1", "n3", "n4");
        assertThat(undoable()).isEqualTo("move Sloe");
        strips().requireSelectedItems(1);

        drag(strips().target(), MouseButton.LEFT_BUTTON, List.of(new Point(60, 4 * pitch - 6), new Point(60, 2)));
        assertThat(ids()).containsExactly("n4", "n2", "n1", "n3");
        undo();
        undo();
        assertThat(ids()).containsExactly("n1", "n2", "n3", "n4");
    }

    @Test
    void theLineOfInsertionShowsAndEscapeDropsTheDrag() {
        int pitch = pitch();
        robot().moveMouse(strips().target(), new Point(60, 20));
        robot().pressMouse(MouseButton.LEFT_BUTTON);
        robot().moveMouse(strips().target(), new Point(60, 3 * pitch + 2));
        shots("dragging");
        robot().pressAndReleaseKey(KeyEvent.VK_ESCAPE);
        robot().releaseMouse(MouseButton.LEFT_BUTTON);
        robot().waitForIdle();
        assertThat(ids()).containsExactly("n1", "n2", "n3", "n4");
    }

    @Test
    void aStripThatIsUndoneWhileItIsDraggedIsDroppedNowhere() {
        act(() -> session.edit(NoteEdits.add("n5", note("n4").stick(), Optional.empty(), Optional.empty())));
        carry(4, 2);
        undo();
        robot().releaseMouse(MouseButton.LEFT_BUTTON);
        robot().waitForIdle();
        assertThat(ids()).containsExactly("n1", "n2", "n3", "n4");
        assertThat(undoable()).isEqualTo("nothing");
    }

    @Test
    void theStripThatWasTakenUpIsDroppedWhereverItStandsMeanwhile() {
        act(() -> session.edit(NoteEdits.move(List.of(note("n2")), 0)));
        carry(0, 3);
        undo();
        robot().releaseMouse(MouseButton.LEFT_BUTTON);
        robot().waitForIdle();
        assertThat(ids()).containsExactly("n1", "n3", "n2", "n4");
        assertThat(undoable()).isEqualTo("move Peat");
    }

    private void carry(int from, int gap) {
        int pitch = pitch();
        robot().moveMouse(strips().target(), new Point(60, from * pitch + 20));
        robot().pressMouse(MouseButton.LEFT_BUTTON);
        robot().moveMouse(strips().target(), new Point(60, gap * pitch + 2));
        robot().waitForIdle();
    }

    @Test
    void severalStripsAreDraggedAndChangedTogether() {
        strips().selectItems(0, 2);
        int pitch = pitch();
        drag(
                strips().target(),
                MouseButton.LEFT_BUTTON,
                List.of(new Point(60, 20), new Point(60, 60), new Point(60, 4 * pitch - 4)));
        assertThat(ids()).containsExactly("n2", "n4", "n1", "n3");
        assertThat(undoable()).isEqualTo("move 2 strips");
        strips().requireSelectedItems(2, 3);

        robot().pressAndReleaseKey(KeyEvent.VK_ENTER);
        window().comboBox("notes.editor.zone").requireFocused();
        assertThat(purposeShown()).isEmpty();
        window().comboBox("notes.editor.touch").selectItem("light");
        until(
                "both are light",
                () -> note("n1").touch() == note("n3").touch() && note("n3").touch() == Touch.LIGHT);
        assertThat(undoable()).isEqualTo("change touch of 2 strips");
        assertThat(note("n1").purpose()).isEqualTo("darks");
        assertThat(note("n3").purpose()).isEqualTo("land-edge");
        shots("several");
        strips().clickItem(0);
        strips().requireSelectedItems(0);
    }

    @Test
    void oneOfSeveralIsSelectedAloneByAClick() {
        strips().selectItems(0, 1, 2);
        drag(strips().target(), MouseButton.LEFT_BUTTON, List.of(new Point(60, 66), new Point(60, 68)));
        strips().requireSelectedItems(1);
        assertThat(undoable()).isEqualTo("nothing");
    }

    @Test
    void aBreakIsSetMovedPastAndTakenAway() {
        strips().clickItem(2);
        robot().pressAndReleaseKey(KeyEvent.VK_ENTER, InputEvent.CTRL_MASK);
        assertThat(note("n3").breakBefore()).isTrue();
        assertThat(undoable()).isEqualTo("break before Far slate");
        shots("break");
        robot().pressAndReleaseKey(KeyEvent.VK_UP, InputEvent.ALT_MASK);
        assertThat(ids()).containsExactly("n1", "n2", "n3", "n4");
        assertThat(note("n4").breakBefore()).isTrue();
        assertThat(note("n3").breakBefore()).isFalse();

        int below = ask(() -> strips().target().getCellBounds(3, 3).y);
        drag(
                strips().target(),
                MouseButton.LEFT_BUTTON,
                List.of(new Point(60, 20), new Point(60, 60), new Point(60, below + 24)));
        assertThat(ids()).containsExactly("n2", "n3", "n1", "n4");
        assertThat(note("n1").breakBefore()).isTrue();
        strips().clickItem(2);
        robot().pressAndReleaseKey(KeyEvent.VK_ENTER, InputEvent.CTRL_MASK);
        assertThat(ask(() -> session.study().notes())).noneMatch(ColorNote::breakBefore);
    }

    @Test
    void stripsAreCopiedAndKeptInPlaceByKeysAndByThePopup() {
        strips().clickItem(1);
        robot().pressAndReleaseKey(KeyEvent.VK_D, InputEvent.CTRL_MASK);
        assertThat(ids()).containsExactly("n1", "n2", "n5", "n3", "n4");
        strips().requireSelectedItems(2);
        robot().pressAndReleaseKey(KeyEvent.VK_K, InputEvent.CTRL_MASK);
        assertThat(note("n5").pinned()).isTrue();
        robot().click(strips().target(), new Point(60, 3 * pitch() + 20), MouseButton.RIGHT_BUTTON, 1);
        shots("popup");
        robot().click(robot().finder().findByName("notes-keep", JMenuItem.class, true));
        assertThat(note("n3").pinned()).isTrue();
        strips().requireSelectedItems(3);
        shots("kept");
    }

    @Test
    void layerAndOwnWordsAreEdits() {
        strips().item(1).doubleClick();
        act(() -> robot().finder()
                .findByName(card, "notes.editor.layer", JSpinner.class)
                .setValue(2));
        assertThat(note("n2").layer()).isEqualTo(2);
        window().textBox("notes.editor.words").enterText("drag it sideways");
        act(card::settle);
        assertThat(note("n2").words()).isEqualTo("drag it sideways");
        assertThat(undoable()).isEqualTo("change words of Peat");
        shots("own-words");
    }

    @Test
    void wordsTypedStayWithTheirStripWhenAnotherIsClicked() {
        strips().item(0).doubleClick();
        window().textBox("notes.editor.words").enterText("soft");
        strips().clickItem(1);
        assertThat(note("n1").words()).isEqualTo("soft");
        assertThat(note("n2").words()).isEmpty();
        assertThat(window().textBox("notes.editor.words").text()).isEmpty();
    }

    @Test
    void aTrembleIsAClick() {
        drag(strips().target(), MouseButton.LEFT_BUTTON, List.of(new Point(60, 40), new Point(60, 47)));
        assertThat(ids()).containsExactly("n1", "n2", "n3", "n4");
        strips().requireSelectedItems(0);
    }

    @Test
    void keysMoveAndRemoveTheSelectedStrip() {
        strips().clickItem(0);
        robot().pressAndReleaseKey(KeyEvent.VK_DOWN, InputEvent.ALT_MASK);
        robot().pressAndReleaseKey(KeyEvent.VK_DOWN, InputEvent.ALT_MASK);
        assertThat(ids()).containsExactly("n2", "n3", "n1", "n4");
        robot().pressAndReleaseKey(KeyEvent.VK_UP, InputEvent.ALT_MASK);
        assertThat(ids()).containsExactly("n2", "n1", "n3", "n4");
        robot().pressAndReleaseKey(KeyEvent.VK_DOWN);
        robot().pressAndReleaseKey(KeyEvent.VK_DELETE);
        assertThat(ids()).containsExactly("n2", "n1", "n4");
        assertThat(undoable()).isEqualTo("remove Far slate");
        undo();
        assertThat(ids()).containsExactly("n2", "n1", "n3", "n4");
    }

    @Test
    void aStripsChoicesAreEdits() {
        strips().clickItem(3);
        robot().pressAndReleaseKey(KeyEvent.VK_ENTER);
        window().comboBox("notes.editor.zone").requireFocused().selectItem("ridge");
        until("the zone is taken", () -> note("n4").zone().equals(Optional.of("z3")));
        assertThat(undoable()).isEqualTo("change zone of Rime");
        window().comboBox("notes.editor.purpose").selectItem("sky");
        until("the purpose is taken", () -> note("n4").purpose().equals("sky"));
        window().comboBox("notes.editor.direction").selectItem("upright");
        until("the direction is taken", () -> note("n4").direction() == ColorNote.Direction.UPRIGHT);
        window().comboBox("notes.editor.touch").selectItem("firm");
        until("the touch is taken", () -> note("n4").touch() == ColorNote.Touch.FIRM);
        assertThat(undoable()).isEqualTo("change touch of Rime");
        shots("editor");
        undo();
        assertThat(note("n4").touch()).isEqualTo(ColorNote.Touch.LIGHT);
        assertThat(window().comboBox("notes.editor.touch").selectedItem()).isEqualTo("light");
        robot().pressAndReleaseKey(KeyEvent.VK_ESCAPE);
        window().panel("notes.card");
        strips().requireFocused();
    }

    @Test
    void theCardIsArrangedByTheRulesThatAreMarked() {
        act(() -> session.edit(NoteEdits.move(List.of(note("n3")), 0)));
        window().button("notes.arrange").click();
        until(
                "an order is found",
                () -> window().button("notes.arranging.take").target().isEnabled());
        window().button("notes.arranging.take").requireFocused();
        assertThat(reasons())
                .containsExactly(
                        "A1  Sloe · was 2\nBefore Far slate: darks before what comes over them.",
                        "A2  Peat · was 3\nBefore Far slate: darks before what comes over them.",
                        "A3  Far slate · was 1\nAfter Peat: darks before what comes over them.",
                        "A4  Rime\nNo rule speaks: it stays where you had it.");
        shots("arranging");
        window().toggleButton("notes.arranging.show.rules").click();
        shots("arranging-rules");
        window().checkBox("notes.arranging.rule.darks-early").click();
        until(
                "another order is found",
                () -> window().button("notes.arranging.take").target().isEnabled());
        window().toggleButton("notes.arranging.show.order").click();
        window().button("notes.arranging.take").click();
        assertThat(undoable()).isEqualTo("arrange the card");
        assertThat(ask(() -> session.study().rulesOff())).containsExactly("darks-early");
        strips().requireFocused();
        undo();
        assertThat(ids()).containsExactly("n3", "n1", "n2", "n4");

        window().button("notes.arrange").click();
        robot().pressAndReleaseKey(KeyEvent.VK_ESCAPE);
        strips().requireFocused();
    }

    private List<String> reasons() {
        return ask(() -> robot()
                .finder()
                .findAll(card, new GenericTypeMatcher<>(JTextArea.class, true) {
                    @Override
                    protected boolean isMatching(JTextArea words) {
                        return "notes.arranging.why".equals(words.getName());
                    }
                })
                .stream()
                .map(JTextArea::getText)
                .toList());
    }

    @Test
    void whatWasFoundForAnotherStudyIsLeft() {
        window().button("notes.arrange").click();
        act(() -> session.edit(NoteEdits.remove(List.of(note("n4")))));
        assertThat(ask(() -> strips().target().isShowing())).isTrue();
    }

    @Test
    void aPurposeMayBeThePaintersOwnWords() {
        strips().item(0).doubleClick();
        typeAsPurpose("soot");
        robot().pressAndReleaseKey(KeyEvent.VK_TAB);
        until("the purpose is taken", () -> note("n1").purpose().equals("soot"));
        assertThat(undoable()).isEqualTo("change purpose of Sloe");
    }

    @ParameterizedTest
    @CsvSource({"darks, lights", "darks, darks"})
    void aPurposeTypedStaysWithItsStripWhenAnotherIsClicked(String first, String second) {
        ColorNote[] four = KilnHill.study().notes().toArray(ColorNote[]::new);
        act(() -> session.open(
                KilnHill.study()
                        .withNotes(List.of(four[0].withPurpose(first), four[1].withPurpose(second), four[2], four[3])),
                Optional.empty()));
        strips().item(0).doubleClick();
        typeAsPurpose("xyz");
        strips().clickItem(1);
        assertThat(note("n1").purpose()).isEqualTo("xyz");
        assertThat(note("n2").purpose()).isEqualTo(second);
        assertThat(purposeShown()).isEqualTo(second);
        assertThat(undoable()).isEqualTo("change purpose of Sloe");

        strips().clickItem(0);
        assertThat(purposeShown()).isEqualTo("xyz");
        undo();
        assertThat(purposeShown()).isEqualTo(first);
        assertThat(undoable()).isEqualTo("nothing");
    }

    private void typeAsPurpose(String words) {
        JComboBox<?> purpose = window().comboBox("notes.editor.purpose").target();
        robot().focusAndWaitForFocusGain(ask(() -> purpose.getEditor().getEditorComponent()));
        robot().pressAndReleaseKey(KeyEvent.VK_A, InputEvent.CTRL_MASK);
        robot().enterText(words);
    }

    private String purposeShown() {
        JComboBox<?> purpose = window().comboBox("notes.editor.purpose").target();
        return ask(() -> String.valueOf(purpose.getEditor().getItem()));
    }

    @Test
    void aPurposeOnlyTriedInTheOpenListIsNotTaken() {
        strips().item(0).doubleClick();
        JComboBox<?> purpose = window().comboBox("notes.editor.purpose").target();
        robot().focusAndWaitForFocusGain(ask(() -> purpose.getEditor().getEditorComponent()));
        robot().pressAndReleaseKey(KeyEvent.VK_DOWN);
        until("the list is open", purpose::isPopupVisible);
        robot().pressAndReleaseKey(KeyEvent.VK_DOWN);
        act(card::settle);
        assertThat(undoable()).isEqualTo("nothing");
        strips().clickItem(1);
        assertThat(undoable()).isEqualTo("nothing");
    }

    @Test
    void settlingTakesThePurposeAsFarAsItIsTyped() {
        act(card::settle);
        strips().item(0).doubleClick();
        act(card::settle);
        assertThat(undoable()).isEqualTo("nothing");

        typeAsPurpose("xy");
        act(card::settle);
        assertThat(note("n1").purpose()).isEqualTo("xy");
        robot().enterText("z");
        assertThat(purposeShown()).isEqualTo("xyz");
        act(card::settle);
        assertThat(note("n1").purpose()).isEqualTo("xyz");
    }

    @Test
    void whatIsBeingTypedOutlastsAnEditElsewhere() {
        strips().item(0).doubleClick();
        typeAsPurpose("xy");
        act(() -> session.edit(NoteEdits.remove(List.of(note("n4")))));
        robot().enterText("z");
        act(card::settle);
        assertThat(note("n1").purpose()).isEqualTo("xyz");
    }

    @Test
    void walkingThroughTheOpenListOfZonesMakesNoEdit() {
        strips().clickItem(0);
        window().button("notes.change").click();
        JComboBox<?> zone = window().comboBox("notes.editor.zone").target();
        robot().pressAndReleaseKey(KeyEvent.VK_DOWN);
        until("the list is open", zone::isPopupVisible);
        robot().pressAndReleaseKey(KeyEvent.VK_DOWN);
        robot().pressAndReleaseKey(KeyEvent.VK_DOWN);
        robot().waitForIdle();
        assertThat(undoable()).isEqualTo("nothing");
        robot().pressAndReleaseKey(KeyEvent.VK_ENTER);
        until("the zone is taken", () -> note("n1").zone().equals(Optional.of("z3")));
        undo();
        assertThat(undoable()).isEqualTo("nothing");
    }

    @Test
    void aNewZoneIsAskedForAndTaken() {
        strips().clickItem(3);
        window().button("notes.change").click();
        window().comboBox("notes.editor.zone").selectItem("new zone…");
        window().textBox("notes.zone.name").requireFocused();
        shots("zone");
        window().button("notes.zone.add").click();
        window().textBox("notes.zone.name").requireFocused().enterText("winter sky");
        window().comboBox("notes.zone.plane").selectItem("sky");
        window().comboBox("notes.zone.distance").selectItem("far");
        window().button("notes.zone.add").click();
        until("the strip is in it", () -> note("n4").zone().equals(Optional.of("z4")));
        assertThat(ask(() -> session.study().zone("z4").orElseThrow()))
                .isEqualTo(new Zone("z4", "winter sky", Zone.Plane.SKY, Zone.Distance.FAR));
        assertThat(window().comboBox("notes.editor.zone").selectedItem()).isEqualTo("winter sky");
        undo();
        assertThat(ask(() -> session.study().zones())).hasSize(3);
        assertThat(window().comboBox("notes.editor.zone").selectedItem()).isEqualTo("none");
    }

    @Test
    void withoutNotesAndWithoutABoxItSaysWhatToDo() {
        act(() -> session.open(KilnHill.study().withNotes(List.of()).withBox(Optional.empty()), Optional.empty()));
        window().label("notes.empty").requireVisible();
        window().button("notes.remove").requireDisabled();
        shots("empty");
        window().button("notes.open-box").click();
        window().button("box.file").requireFocused().click();
        assertThat(opened).containsExactly("box file");
        shots("no-box");
    }

    private void layThePhotographUnder() {
        act(() -> {
            session.open(KilnHill.beforePhotograph(), Optional.empty());
            session.photograph(Optional.of(KilnHill.photograph()));
        });
    }

    private boolean tellsOfAZone() {
        return robot().finder()
                .findByName(card, "notes.zone-colors", JPanel.class, false)
                .isVisible();
    }

    private List<String> zoneColors() {
        return ask(() -> robot()
                .finder()
                .findAll(card, new GenericTypeMatcher<>(JLabel.class) {
                    @Override
                    protected boolean isMatching(JLabel label) {
                        return "notes.zone-color".equals(label.getName());
                    }
                })
                .stream()
                .map(JLabel::getText)
                .toList());
    }

    /** By ASTM D1535 the grays' luminances of 2.96 % and 63.1 % are the values 1.96 and 8.3. */
    @Test
    void selectingANoteTellsWhatThePhotographIsLikeInItsZone() {
        layThePhotographUnder();
        strips().clickItem(1);
        until("the slope is told of", this::tellsOfAZone);
        assertThat(window().label("notes.zone-mean").text()).startsWith("slope shadow in the photograph: value ");
        assertThat(zoneColors()).containsExactly("80 % at 2.0", "20 % at 8.3");
        shots("zone-colors");

        strips().clickItem(0);
        until(
                "the kiln is told of",
                () -> window().label("notes.zone-mean").text().startsWith("kiln"));
        assertThat(window().label("notes.zone-mean").text()).isEqualTo("kiln in the photograph: value 2.0");
        assertThat(zoneColors()).containsExactly("100 % at 2.0");

        strips().clickItem(2);
        until("the ridge has no area", () -> !tellsOfAZone());
        strips().clickItem(0);
        until("the kiln is told of again", this::tellsOfAZone);
        act(() -> session.show("t2"));
        assertThat(ask(this::tellsOfAZone)).isFalse();
        act(() -> session.show("t1"));
        until("the kiln lies here", this::tellsOfAZone);
        act(() -> session.photograph(Optional.empty()));
        assertThat(ask(this::tellsOfAZone)).isFalse();
    }

    @Test
    void everythingHasAnAccessibleName() {
        assertThat(ask(() -> strips().target().getAccessibleContext().getAccessibleName()))
                .isEqualTo("color notes");
        assertThat(ask(() -> strips().target()
                        .getAccessibleContext()
                        .getAccessibleChild(1)
                        .getAccessibleContext()
                        .getAccessibleName()))
                .isEqualTo("2. A2  Peat, value 2.1: slope shadow, darks, slanting left, firm");
        window().button("notes.open-box").click();
        assertThat(ask(() -> window().button("box.stick.s1")
                        .target()
                        .getAccessibleContext()
                        .getAccessibleName()))
                .isEqualTo("A1  Sloe   value 1.8   on the card as 1");
    }
}
