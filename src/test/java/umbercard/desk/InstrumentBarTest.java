package umbercard.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.swing.JRootPane;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import umbercard.desk.canvas.Fakes;
import umbercard.desk.canvas.NotanCard;
import umbercard.desk.session.Session;
import umbercard.desk.theme.Theme;
import umbercard.door.Instrument;
import umbercard.door.Step;
import umbercard.kernel.Plugins;

class InstrumentBarTest {
    private final Session session = Fakes.session();
    private final List<String> told = new ArrayList<>();
    private final Instrument good = Fakes.with("land-edge", "e", gesture -> Step.idle());

    @BeforeEach
    void theme() {
        Theme.install(false);
    }

    private InstrumentBar bar(Instrument... instruments) {
        Plugins<Instrument> plugins = Plugins.of(List.of(instruments));
        card = new NotanCard(session, plugins);
        card.setSize(660, 440);
        return new InstrumentBar(card, plugins, told::add);
    }

    private NotanCard card = new NotanCard(session, Plugins.of(List.of()));

    private static List<JToggleButton> words(InstrumentBar bar) {
        return Arrays.stream(bar.getComponents()).map(JToggleButton.class::cast).toList();
    }

    private void press() {
        card.dispatchEvent(
                new MouseEvent(card, MouseEvent.MOUSE_PRESSED, 0, 0, 300, 200, 1, false, MouseEvent.BUTTON1));
    }

    @Test
    void oneThatCannotBeTakenUpIsToldOnceAndTheOthersWork() {
        Instrument broken = Fakes.failingToPick("lay-dark", "d");
        InstrumentBar bar = bar(broken, good);
        bar.bindKeys(new JRootPane());
        assertThat(told).containsExactly("Lay dark");
        assertThat(card.instrument()).contains(good);
        assertThat(words(bar)).extracting(JToggleButton::isEnabled).containsExactly(false, true);
        assertThat(words(bar)).extracting(JToggleButton::isSelected).containsExactly(false, true);
        words(bar).get(0).doClick(0);
        card.take(broken);
        assertThat(card.instrument()).contains(good);
        assertThat(told).hasSize(1);
    }

    @Test
    void oneThatFailsInUseIsToldOnceAndTheFirstOtherIsTakenUp() {
        Instrument broken = Fakes.failingAtTheSecondGesture("lift-light", "l");
        InstrumentBar bar = bar(good, broken);
        words(bar).get(1).doClick(0);
        assertThat(card.instrument()).contains(broken);
        press();
        assertThat(session.seen()).isNotEqualTo(session.study());
        press();
        assertThat(session.seen()).isEqualTo(session.study());
        assertThat(told).containsExactly("Lift light");
        assertThat(card.instrument()).contains(good);
        assertThat(words(bar)).extracting(JToggleButton::isEnabled).containsExactly(true, false);
        assertThat(words(bar)).extracting(JToggleButton::isSelected).containsExactly(true, false);
    }

    @Test
    void oneWithoutWordsOrWithoutAKeyHasNoWordOnTheBar() {
        Instrument wordless = Fakes.with("nobody", "n", gesture -> Step.idle());
        Instrument keyless = Fakes.with("horizon", "no such key", gesture -> Step.idle());
        InstrumentBar bar = bar(wordless, good, keyless);
        assertThat(words(bar)).extracting(JToggleButton::getText).containsExactly("Land edge");
        assertThat(told).hasSize(2);
        assertThat(card.instrument()).contains(good);
    }

    @Test
    void lettersAreBoundToTheWords() {
        InstrumentBar bar = bar(Fakes.failingToPick("lay-dark", "d"), good);
        JRootPane window = new JRootPane();
        bar.bindKeys(window);
        assertThat(window.getInputMap(JRootPane.WHEN_IN_FOCUSED_WINDOW).get(KeyStroke.getKeyStroke("E")))
                .isEqualTo("take-land-edge");
    }

    @Test
    void withoutAnyTheBarIsEmpty() {
        assertThat(words(bar())).isEmpty();
        assertThat(card.instrument()).isEmpty();
        assertThat(told).isEmpty();
    }
}
