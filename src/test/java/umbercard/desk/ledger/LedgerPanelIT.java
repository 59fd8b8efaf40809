package umbercard.desk.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.assertj.swing.core.GenericTypeMatcher;
import org.junit.jupiter.api.Test;
import umbercard.desk.KilnHill;
import umbercard.desk.OnDesk;
import umbercard.desk.session.Session;
import umbercard.desk.theme.Theme;
import umbercard.door.Figure;
import umbercard.door.Finding;
import umbercard.door.Limits;
import umbercard.door.Place;
import umbercard.door.Plan;
import umbercard.door.Reading;
import umbercard.door.Rule;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.kernel.Plugins;
import umbercard.model.Mark;
import umbercard.model.Study;
import umbercard.model.edit.Edits;
import umbercard.readings.Evaluation;
import umbercard.words.Message;

class LedgerPanelIT extends OnDesk {
    private final List<Collection<Place>> looked = new ArrayList<>();
    private final List<String> tried = new ArrayList<>();
    private Session session;
    private JPanel desk;

    /** A reading of a test. */
    private record Told(String id, int rank, Function<Plan, Finding> finds) implements Reading {
        @Override
        public Rule rule() {
            return new Rule(id, rank, Map.of(), "none");
        }

        @Override
        public Finding read(Plan plan, Limits limits) {
            return finds.apply(plan);
        }
    }

    @Override
    protected Dimension windowSize() {
        return new Dimension(1280, 146);
    }

    @Override
    protected JFrame makeWindow() {
        Theme.install(false);
        session = new Session(KilnHill.study(), Optional.empty());
        JFrame frame = new JFrame("ledger");
        frame.setUndecorated(true);
        desk = new JPanel(new MigLayout("insets 16", "[grow,fill]", "[grow,fill]"));
        lay(Evaluation.find());
        frame.setContentPane(desk);
        return frame;
    }

    private void lay(Plugins<Reading> readings) {
        desk.removeAll();
        desk.add(new LedgerPanel(session, readings, looked::add, () -> tried.add("what if")));
        desk.revalidate();
    }

    private static Told told(String id, int rank, Finding.Verdict verdict) {
        return new Told(
                id,
                rank,
                plan -> new Finding(
                        verdict,
                        List.of(new Figure("one", 1, "count")),
                        Message.of("readings.dark-share.not-set"),
                        List.of(new Place.At(new Point(.5, .5)))));
    }

    private Component named(String name) {
        return robot().finder().findByName(desk, name, false);
    }

    private boolean says(String reading, String words) {
        return robot().finder()
                        .findAll(desk, new GenericTypeMatcher<>(ReadingLine.class) {
                            @Override
                            protected boolean isMatching(ReadingLine line) {
                                return line.getName().equals("ledger.reading." + reading)
                                        && line.spoken().contains(words);
                            }
                        })
                        .size()
                == 1;
    }

    private String figure() {
        return ask(() -> ((ShareRule) named("ledger.share")).figure());
    }

    @Test
    void whatIsToBeLookedAtAgainLeadsToWhatCouldBeTried() {
        act(() -> session.show("t2"));
        until("the share is read", () -> says("dark-share", "look again: Dark 50 %"));
        robot().focusAndWaitForFocusGain(named("ledger.reading.dark-share"));
        robot().pressAndReleaseKey(KeyEvent.VK_ENTER);
        assertThat(tried).hasSize(1);
        robot().click(named("ledger.reading.dark-share"));
        assertThat(tried).hasSize(2);
        act(() -> session.show("t1"));
        until("the share holds", () -> says("dark-share", "holds: Dark 58 %"));
        robot().focusAndWaitForFocusGain(named("ledger.reading.dark-share"));
        robot().pressAndReleaseKey(KeyEvent.VK_ENTER);
        assertThat(tried).as("there is nothing to mend").hasSize(2);
    }

    @Test
    void theReadingsOfTheShownThumbnailAreSaid() {
        until("the share is read", () -> says("dark-share", "holds: Dark 58 %"));
        until("the height is read", () -> says("horizon-height", "holds: The land edge runs at 61 %"));
        until("the share is shown", () -> figure().equals("dark 58 : 42 light"));
        shots("holds");

        act(() -> session.show("t2"));
        until("the share is read again", () -> says("dark-share", "look again: Dark 50 %"));
        until("the share is shown again", () -> figure().equals("dark 50 : 50 light"));
        shots("look-again");

        act(() -> session.show("t3"));
        until("the missing line is said", () -> says("horizon-height", "not set"));
        assertThat(ask(() -> ((HeightRule) named("ledger.height")).figure())).isEqualTo("not set");
        shots("not-set");
    }

    @Test
    void theFiguresFollowTheHand() {
        until("the share is read", () -> says("dark-share", "Dark 58 %"));
        for (int i = 1; i <= 20; i++) {
            double top = 1 - i / 20.0;
            act(() -> session.preview(Optional.of(with(Outline.rectangle(0, top, 1.4, 1)))));
        }
        until("the last preview is read", () -> says("dark-share", "Light 0 %"));
        assertThat(figure()).isEqualTo("dark 100 : 0 light");
        act(() -> session.preview(Optional.empty()));
        until("the study itself is read", () -> says("dark-share", "Dark 58 %"));
    }

    private Study with(Outline outline) {
        return Edits.addMark("t1", new Mark("m9", Mark.Kind.LAY, outline)).apply(session.study());
    }

    @Test
    void aSlowReadingLeavesTheEventThreadFreeAndTheLastFiguresDimmed() throws InterruptedException {
        CountDownLatch hold = new CountDownLatch(1);
        CountDownLatch begun = new CountDownLatch(1);
        act(() -> lay(Plugins.of(List.of(new Told("slow", 1, plan -> {
            begun.countDown();
            waitFor(hold);
            return new Finding(Finding.Verdict.HOLDS, List.of(), Message.of("readings.dark-share.not-set"), List.of());
        })))));
        assertThat(begun.await(10, TimeUnit.SECONDS)).isTrue();
        assertThat(ask(() -> session.shown())).isEqualTo("t1");
        until("the share does not wait", () -> figure().equals("dark 58 : 42 light"));
        assertThat(says("slow", "holds")).isFalse();
        hold.countDown();
        until("it is read in the end", () -> says("slow", "holds"));
    }

    private static void waitFor(CountDownLatch hold) {
        try {
            assertThat(hold.await(10, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException interrupted) {
            throw new IllegalStateException(interrupted);
        }
    }

    @Test
    void whatIsToBeLookedAtAgainComesFirstAndTheRestIsCounted() {
        act(() -> lay(Plugins.of(List.of(
                told("a", 1, Finding.Verdict.HOLDS),
                told("b", 2, Finding.Verdict.LOOK_AGAIN),
                told("c", 3, Finding.Verdict.FIGURE_ONLY),
                told("d", 4, Finding.Verdict.HOLDS),
                told("e", 5, Finding.Verdict.NOT_SET),
                told("f", 6, Finding.Verdict.DOES_NOT_APPLY)))));
        until(
                "they are read",
                () -> says("f", "does not apply")
                        && !window().button("ledger.more").text().contains("figure"));
        robot().waitForIdle();
        shots("folded");
        assertThat(ask(() -> named("ledger.reading.b").getY())).isZero();
        assertThat(ask(() -> named("ledger.reading.a").getY())).isPositive();
        assertThat(ask(() -> named("ledger.reading.f").isVisible())).isFalse();
        assertThat(ask(() -> named("ledger.reading.c").isVisible())).as("three").isTrue();
        assertThat(ask(() -> named("ledger.reading.d").isVisible())).isFalse();
        assertThat(window().button("ledger.more").text())
                .isEqualTo("All readings · 1 more holds · 1 does not apply · 1 not set");
    }

    @Test
    void theReadingUnderTheFocusTellsItsPlace() {
        until("the height is read", () -> says("horizon-height", "holds"));
        JComponent line = (JComponent) named("ledger.reading.horizon-height");
        act(line::requestFocusInWindow);
        until("it has the focus", line::isFocusOwner);
        assertThat(looked)
                .last()
                .asInstanceOf(org.assertj.core.api.InstanceOfAssertFactories.LIST)
                .singleElement()
                .isInstanceOf(Place.Between.class);
        assertThat(ask(() -> line.getAccessibleContext().getAccessibleName()))
                .startsWith("holds: The land edge runs at 61 %");
        shots("focused");
    }

    @Test
    void aStudyWithoutAThumbnailIsSaidToHaveNothingToRead() {
        act(() -> session.open(
                KilnHill.study().withThumbnails(List.of()).withChosen(Optional.empty()), Optional.empty()));
        shots("empty");
        assertThat(ask(() -> named("ledger.share").isShowing())).isFalse();
    }
}
