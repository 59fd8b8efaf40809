package umbercard.desk.box;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.prefs.Preferences;
import java.util.stream.IntStream;
import javax.swing.JCheckBox;
import org.assertj.swing.core.GenericTypeMatcher;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import umbercard.color.Lab;
import umbercard.desk.KilnHill;
import umbercard.desk.session.Session;
import umbercard.model.Stick;
import umbercard.store.Preferred;
import umbercard.words.Words;

/** Sticks for a zone's colors, and what could be set out, found in the box that lies over the color card. */
class ZonesInBoxIT extends OnOpenBox {
    @Override
    Session makeSession() {
        Session session = new Session(KilnHill.beforePhotograph(), Optional.empty());
        session.photograph(Optional.of(KilnHill.photograph()));
        return session;
    }

    @AfterEach
    void forgetTrust() {
        Preferences.userRoot().node("umbercard").remove("trust-in-value");
    }

    private void turnToZones() {
        choose("zone");
        until("the zones are known", () -> zones() == 2);
    }

    private int zones() {
        return window().comboBox("box.zone.choice").target().getItemCount();
    }

    /** The ids of the sticks named for a color, the best first. */
    private List<String> named(int color) {
        return ask(() -> IntStream.rangeClosed(1, 3)
                .mapToObj(rank -> robot().finder()
                        .findByName("box.match." + color + "." + rank, StickButton.class, true)
                        .stick()
                        .id())
                .toList());
    }

    private boolean isNamed(int color) {
        return !robot().finder()
                .findAll(named -> ("box.match." + color + ".1").equals(named.getName()))
                .isEmpty();
    }

    /** Of the sticks within half a step of a value, the one nearest to gray. */
    private String dullest(double value) {
        return ask(() -> session().study().box().orElseThrow().sticks().stream()
                .filter(stick -> Math.abs(stick.color().value() - value) <= 0.5)
                .min(Comparator.comparingDouble(stick -> stick.color().chroma()))
                .orElseThrow()
                .id());
    }

    /** The kiln's zone is all of one gray of value 1.96: of the sticks within half a step of it, the dullest comes first. */
    @Test
    void theSticksNearestToAZonesColorAreNamedAndPutOnTheCardInThatZone() {
        turnToZones();
        window().comboBox("box.zone.choice").requireSelection(0);
        assertThat(window().comboBox("box.zone.choice").contents()).containsExactly("kiln", "slope shadow");
        assertThat(named(1)).startsWith(dullest(1.96)).hasSize(3);
        shots("zone");
        window().button("box.match.1.1").click();
        assertThat(onCard).containsExactly(dullest(1.96) + " in z1");
        window().comboBox("box.zone.choice").selectItem(1);
        until("the slope has two colors", () -> isNamed(2));
        window().button("box.match.2.1").focus();
        robot().pressAndReleaseKey(KeyEvent.VK_SPACE);
        assertThat(onCard).hasSize(2);
        assertThat(onCard.get(1)).endsWith("in z2");
        shots("zone-of-two");
    }

    @Test
    void onlyTheSticksSetOutAreNamedWhereThePainterWantsThat() {
        turnToZones();
        choose("zone.from-set-out");
        until("nothing is out", () -> !isNamed(1));
        assertThat(window().label("box.zone.told").text()).contains("No stick that is at hand is set out");
        List<Stick> three =
                ask(() -> session().study().box().orElseThrow().sticks().subList(3, 6));
        act(() -> session().edit(BoxEdits.setOutOnly(three)));
        until("three are named", () -> isNamed(1));
        assertThat(named(1)).containsExactlyInAnyOrder("s4", "s5", "s6");
    }

    /**
     * The kiln's gray is of value 2.0, L* 19.9: one stick of its own chroma is .75 of a step too light, the other is as light as
     * it within .2, but red. The latter comes first until value counts no more than the rest.
     */
    @Test
    void howFarValueCountsIsForThePainterToSayAndIsKept() {
        Stick dull = new Stick("dull", "Dull", new Stick.Slot(7, 1), new Lab(27.9, 0, 0));
        Stick strong = new Stick("strong", "Strong", new Stick.Slot(7, 2), new Lab(21.9, 30, 0));
        act(() -> session().edit(BoxEdits.setOutOnly(List.of(dull, strong))));
        turnToZones();
        choose("zone.from-set-out");
        until("they are named", () -> isNamed(1) && !isNamed(2));
        assertThat(firstNamed()).isEqualTo("strong");
        window().slider("box.trust").slideToMinimum();
        until("the other is first", () -> firstNamed().equals("dull"));
        assertThat(window().label("box.trust.reach").text()).isEqualTo("no more than the rest");
        assertThat(Preferred.trust()).isZero();
    }

    private String firstNamed() {
        return ask(() -> robot().finder()
                .findByName("box.match.1.1", StickButton.class, true)
                .stick()
                .id());
    }

    @Test
    void aThumbnailWithoutZonesSaysWhatIsMissing() {
        turnToZones();
        act(() -> session().show("t2"));
        until("nothing is there", () -> window().label("box.zone.told").text().contains("there is no zone yet"));
        assertThat(isNamed(1)).isFalse();
    }

    private List<JCheckBox> picks() {
        return ask(() -> List.copyOf(robot().finder().findAll(new GenericTypeMatcher<>(JCheckBox.class) {
            @Override
            protected boolean isMatching(JCheckBox box) {
                return box.isShowing();
            }
        })));
    }

    @Test
    void whatCouldBeSetOutIsShownWithReasonsAndSetOutWhenAccepted() {
        choose("set-out");
        window().button("box.suggest").click();
        until("something is suggested", () -> !picks().isEmpty());
        assertThat(window().textBox("box.suggest.summary").text()).contains("cover");
        String spoken = ask(() -> picks().get(0).getAccessibleContext().getAccessibleName());
        assertThat(spoken).matches(".+, .*(covers|dark|accent).*");
        shots("suggestion");
        List<String> offered = picks().stream()
                .map(box -> box.getName().substring("box.suggest.".length()))
                .toList();
        assertThat(setOut()).as("not unasked").isEmpty();
        window().checkBox("box.suggest." + offered.get(0)).uncheck();
        window().button("box.suggest.only").click();
        assertThat(setOut()).containsExactlyElementsOf(offered.subList(1, offered.size()));
        window().panel("box.set-out-view").requireVisible();
        assertThat(ask(() -> session().undoable().map(Words::say).orElse("")))
                .startsWith("set out " + (offered.size() - 1) + " stick");
        act(session()::undo);
        assertThat(setOut()).isEmpty();
    }

    @Test
    void leavingASuggestionLeavesAllAsItIs() {
        choose("set-out");
        window().button("box.suggest").click();
        until("something is suggested", () -> !picks().isEmpty());
        robot().pressAndReleaseKey(KeyEvent.VK_ESCAPE);
        window().textBox("box.find").requireVisible();
        assertThat(setOut()).isEmpty();
        assertThat(ask(() -> session().undoable())).isEmpty();
    }

    @Test
    void addingASuggestionKeepsWhatIsOut() {
        Stick last = ask(() -> session().study().box().orElseThrow().sticks().get(35));
        act(() -> session().edit(BoxEdits.setOutOnly(List.of(last))));
        choose("set-out");
        window().button("box.suggest").click();
        until("something is suggested", () -> !picks().isEmpty());
        int offered = picks().size();
        window().button("box.suggest.also").click();
        assertThat(setOut()).contains(last.id()).hasSizeBetween(offered, offered + 1);
    }
}
