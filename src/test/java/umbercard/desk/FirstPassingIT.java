package umbercard.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.EventQueue;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JFrame;
import javax.swing.JLabel;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.junit.jupiter.api.Test;
import umbercard.desk.session.Session;
import umbercard.desk.work.Background;
import umbercard.geometry.Point;
import umbercard.model.Frame;
import umbercard.model.Reference;
import umbercard.model.Squint;
import umbercard.model.Study;
import umbercard.model.Surface;
import umbercard.model.Thumbnail;
import umbercard.notan.Fold;
import umbercard.picture.Picture;

class FirstPassingIT extends OnDesk {
    private static final int WIDTH = 240;
    private static final int HEIGHT = 180;

    private Session session;
    private FirstPassing firstPass;

    @Override
    protected JFrame makeWindow() {
        Surface surface = new Surface(12, 9, Surface.Unit.IN, 0.25, Optional.empty(), true);
        Frame frame = Frame.largest((double) WIDTH / HEIGHT, surface.ratio());
        Study study = Study.begin("Kiln Hill, first snow", surface)
                .withReference(Optional.of(Reference.to("kiln-hill.jpg", "", frame)));
        session = new Session(study, Optional.empty());
        session.photograph(Optional.of(darkBelow()));
        JFrame window = new JFrame("first pass");
        JLabel beside = new JLabel("beside");
        window.add(beside);
        firstPass = new FirstPassing(session, new Background(new Unwatched()), new Telling(window), window, beside);
        return window;
    }

    /** Light above, growing darker row by row, so that any share of dark can be had. */
    private static Picture darkBelow() {
        int[] pixels = new int[WIDTH * HEIGHT];
        for (int y = 0; y < HEIGHT; y++) {
            Arrays.fill(pixels, y * WIDTH, (y + 1) * WIDTH, 0x010101 * (230 - y));
        }
        return new Picture(WIDTH, HEIGHT, pixels);
    }

    private DialogFixture asked() {
        EventQueue.invokeLater(firstPass::ask);
        return WindowFinder.findDialog("first-pass").using(robot());
    }

    private double darkSeen() {
        Study seen = session.seen();
        return session.thumbnail()
                .map(thumbnail -> Fold.of(thumbnail, seen.ratio()).darkShare())
                .orElse(-1.0);
    }

    @Test
    void noTwoFirstPassesHaveTheSameName() {
        for (int count = 1; count <= 3; count++) {
            int expected = count;
            asked().button("yes").click();
            until(expected + " are there", () -> session.study().thumbnails().size() == expected);
        }
        assertThat(ask(() -> session.study().thumbnails()))
                .extracting(Thumbnail::name)
                .containsExactly("first pass", "first pass 2", "first pass 3");
    }

    @Test
    void showsWhatWouldComeOfItWhileTheRulesMoveAndAddsItAsOneEdit() {
        DialogFixture asked = asked();
        until("half is dark, as in the photograph", () -> Math.abs(darkSeen() - 0.5) < 0.05);
        for (int share = 51; share <= 70; share++) {
            asked.slider("first-pass-dark").slideTo(share);
        }
        until(
                "the card follows the rule to its end",
                () -> asked.label("first-pass-outcome").text().startsWith("70 % dark in 2 masses"));
        assertThat(darkSeen()).isEqualTo(0.7, within(0.01));
        asked.checkBox("first-pass-dark-follows").requireNotSelected();
        assertThat(ask(() -> session.study().thumbnails())).isEmpty();
        assertThat(ask(session::undoable)).isEmpty();
        asked.button("yes").click();
        until("it is there", () -> session.study().thumbnails().size() == 1);
        assertThat(ask(this::darkSeen)).isCloseTo(0.7, within(0.01));
        act(session::undo);
        assertThat(ask(() -> session.study().thumbnails())).isEmpty();
    }

    @Test
    void tracesWithinTheFrameOfTheThumbnailOnTheCardAndKeepsIt() {
        // The lower third alone: the photograph's median, row 90 of 180, lies above it.
        Frame low = new Frame(new Point(0.5, 0.8), 0.3, 0, false);
        act(() -> {
            Study study = session.study();
            session.open(
                    study.withReference(study.reference()
                                    .map(r -> r.withSquint(new Squint("keeping-edges", 0.01))
                                            .withSplit(OptionalDouble.of(5))))
                            .withThumbnails(List.of(
                                    Thumbnail.empty("t1", "all"),
                                    Thumbnail.empty("t2", "low").withFrame(Optional.of(low))))
                            .withChosen(Optional.of("t1")),
                    Optional.empty());
            session.photograph(Optional.of(darkBelow()));
            session.show("t2");
        });
        DialogFixture asked = asked();
        until("all is dark, as in the lower third", () -> darkSeen() > 0.999);
        asked.button("yes").click();
        until("it is there", () -> session.study().thumbnails().size() == 3);
        assertThat(ask(() -> session.study().thumbnails().get(2).frame())).contains(low);
        assertThat(ask(this::darkSeen)).isGreaterThan(0.999);
    }

    @Test
    void leavingItLeavesTheStudyAsItWas() {
        Study before = ask(session::study);
        DialogFixture asked = asked();
        until("a first pass is seen", () -> darkSeen() > 0.3);
        asked.button("no").click();
        until("the dialog is gone", () -> !asked.target().isShowing());
        robot().waitForIdle();
        assertThat(ask(session::seen)).isEqualTo(before);
        assertThat(ask(session::isChanged)).isFalse();
    }
}
