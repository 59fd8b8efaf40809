package umbercard.desk.framing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import umbercard.desk.session.Session;
import umbercard.geometry.Line;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.model.Frame;
import umbercard.model.Mark;
import umbercard.model.Reference;
import umbercard.model.Study;
import umbercard.model.Surface;
import umbercard.model.Thumbnail;
import umbercard.model.edit.Edits;
import umbercard.picture.Picture;
import umbercard.words.Words;

class ViewfinderTest {
    private static final Frame MIDDLE = new Frame(new Point(.5, .5), .5, 0, false);

    private final Session session = session(MIDDLE);
    private final Viewfinder finder = new Viewfinder(session);

    private static Session session(Frame frame) {
        Surface surface = new Surface(25, 20, Surface.Unit.CM, 0, Optional.empty(), false);
        Mark mark = new Mark("m1", Mark.Kind.LAY, Outline.rectangle(0, .5, 1, 1));
        Study study = Study.begin("Hill", surface).withReference(Optional.of(Reference.to("hill.jpg", "", frame)));
        study = Edits.addThumbnail(Thumbnail.empty("t1", "first").withMarks(List.of(mark)))
                .apply(study);
        Session session =
                new Session(Edits.addThumbnail(Thumbnail.empty("t2", "second")).apply(study), Optional.empty());
        session.photograph(Optional.of(new Picture(150, 100, new int[150 * 100])));
        return session;
    }

    private Frame frame() {
        return finder.frame().orElseThrow();
    }

    private Optional<String> undo() {
        return session.undoable().map(Words::say);
    }

    @Test
    void holdingShowsAndLettingGoIsOneEdit() {
        Frame other = MIDDLE.withHeight(.6);
        finder.hold(MIDDLE.withHeight(.55));
        finder.hold(other);
        assertThat(finder.seen()).contains(other);
        assertThat(frame()).isEqualTo(MIDDLE);
        assertThat(undo()).isEmpty();
        finder.letGo("scale");
        assertThat(frame()).isEqualTo(other);
        assertThat(undo()).contains("scaling the frame");
        session.undo();
        assertThat(frame()).isEqualTo(MIDDLE);
    }

    @Test
    void whatIsDroppedOrUndoneLeavesNothing() {
        finder.hold(MIDDLE.withHeight(.55));
        finder.drop();
        assertThat(finder.seen()).contains(MIDDLE);
        finder.hold(MIDDLE.withHeight(.55));
        session.show("t2");
        assertThat(finder.seen()).contains(MIDDLE);
        assertThat(undo()).isEmpty();
    }

    @Test
    void strokesOfOneKindAreOneStepOfUndo() {
        finder.move(.01, 0);
        finder.move(.01, .02);
        assertThat(finder.framing()
                        .orElseThrow()
                        .inFrame(MIDDLE, frame().center())
                        .x())
                .isCloseTo(.645, within(1e-8));
        finder.turnSeen(-1);
        assertThat(frame().tilt()).isEqualTo(1);
        session.undo();
        session.undo();
        assertThat(frame()).isEqualTo(MIDDLE);
        assertThat(undo()).isEmpty();
    }

    @Test
    void marksStayOnTheCard() {
        List<Mark> before = session.thumbnail().orElseThrow().marks();
        finder.move(.1, .1);
        finder.mirror();
        finder.level(new Line(new Point(.2, .5), new Point(.8, .45)));
        finder.largest();
        assertThat(session.thumbnail().orElseThrow().marks()).isEqualTo(before);
    }

    @Test
    void keptInsideTheFrameStopsAtTheEdgeAndLetGoItReachesOut() {
        finder.move(9, 0);
        assertThat(finder.framing().orElseThrow().isInside(frame())).isTrue();
        finder.keepInside(false);
        finder.move(.5, 0);
        assertThat(finder.framing().orElseThrow().shareBare(frame())).isCloseTo(.4, within(1e-6));
        finder.keepInside(true);
        assertThat(finder.framing().orElseThrow().isInside(frame())).isTrue();
        assertThat(undo()).contains("keeping the frame inside");
    }

    @Test
    void aFrameThatReachesOutAlreadyMayGoOnDoingSo() {
        Session out = session(MIDDLE.withCenter(new Point(0, .5)));
        Viewfinder there = new Viewfinder(out);
        out.show("t2");
        assertThat(there.keepsInside()).isFalse();
        there.mirror();
        assertThat(there.frame().orElseThrow().center()).isEqualTo(new Point(0, .5));
    }

    @Test
    void markingTheHorizonLevelsAndIsKept() {
        finder.level();
        assertThat(undo()).isEmpty();
        finder.level(new Line(new Point(.25, .6), new Point(.75, .45)));
        // A rise of 0.15 over 1.5 × 0.5 of the photograph's height.
        assertThat(frame().tilt()).isCloseTo(11.3099325, within(1e-6));
        assertThat(finder.ownHorizon()).contains(new Line(new Point(.25, .6), new Point(.75, .45)));
        finder.upright();
        assertThat(frame().tilt()).isZero();
        finder.level();
        assertThat(frame().tilt()).isCloseTo(11.3099325, within(1e-6));
        session.undo();
        session.undo();
        session.undo();
        assertThat(finder.ownHorizon()).isEmpty();
        assertThat(frame()).isEqualTo(MIDDLE);
    }

    @Test
    void largestIsUprightUnmirroredAndInTheMiddle() {
        finder.move(.1, .1);
        finder.turnSeen(5);
        finder.mirror();
        finder.largest();
        assertThat(frame()).isEqualTo(new Frame(new Point(.5, .5), 1, 0, false));
        finder.largest();
        session.undo();
        assertThat(frame().mirrored()).isTrue();
    }

    @Test
    void inAMirrorThePhotographStillTurnsTheWayItIsAsked() {
        finder.mirror();
        finder.turnSeen(2);
        assertThat(frame().tilt()).isEqualTo(2);
        finder.mirror();
        finder.turnSeen(2);
        assertThat(frame().tilt()).isZero();
    }

    @Test
    void aThumbnailCanHaveAFrameOfItsOwn() {
        finder.own(true);
        finder.mirror();
        session.show("t2");
        assertThat(frame()).isEqualTo(MIDDLE);
        assertThat(finder.isOwn()).isFalse();
        session.show("t1");
        assertThat(frame().mirrored()).isTrue();
        finder.own(false);
        assertThat(frame()).isEqualTo(MIDDLE);
    }

    @Test
    void withoutAPhotographThereIsNothingToFrame() {
        assertThat(finder.isPossible()).isTrue();
        session.photograph(Optional.empty());
        assertThat(finder.isPossible()).isFalse();
        finder.mirror();
        finder.level(new Line(new Point(0, 0), new Point(1, 1)));
        assertThat(undo()).isEmpty();
    }

    @Test
    void whatChangesNothingIsNoEdit() {
        finder.upright();
        finder.keepInside(true);
        finder.own(false);
        assertThat(undo()).isEmpty();
    }
}
