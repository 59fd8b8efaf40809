package umbercard.model.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import umbercard.geometry.Line;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.model.Frame;
import umbercard.model.Mark;
import umbercard.model.Reference;
import umbercard.model.Squint;
import umbercard.model.Study;
import umbercard.model.Surface;
import umbercard.model.Thumbnail;

class FramesTest {
    private static final Frame SHARED = new Frame(new Point(.5, .5), .9, 0, false);
    private static final Frame OTHER = new Frame(new Point(.4, .5), .6, 2.5, true);

    private static Study study() {
        Mark mark = new Mark("m1", Mark.Kind.LAY, Outline.rectangle(0, .5, 1, 1));
        Study study = Study.begin("Hill", new Surface(12, 9, Surface.Unit.IN, 0, Optional.empty(), false))
                .withReference(Optional.of(Reference.to("hill.jpg", "ab", SHARED)
                        .withFade(.3)
                        .withSquint(Squint.gaussian(.02))
                        .withSplit(OptionalDouble.of(4))));
        study = Edits.addThumbnail(Thumbnail.empty("t1", "first").withMarks(List.of(mark)))
                .apply(study);
        return Edits.addThumbnail(Thumbnail.empty("t2", "second")).apply(study);
    }

    @Test
    void thumbnailsShareTheReferencesFrameAndMarksStay() {
        Study framed = Frames.put("t1", OTHER).apply(study());
        assertThat(Frames.of(framed, "t1")).contains(OTHER);
        assertThat(Frames.of(framed, "t2")).contains(OTHER);
        assertThat(framed.thumbnails()).isEqualTo(study().thumbnails());
    }

    @Test
    void aFrameOfItsOwnLeavesTheOthersAlone() {
        Study own = Frames.own("t1", true).apply(study());
        assertThat(Frames.isOwn(own, "t1")).isTrue();
        assertThat(Frames.of(own, "t1")).contains(SHARED);
        Study framed = Frames.put("t1", OTHER).apply(own);
        assertThat(Frames.of(framed, "t1")).contains(OTHER);
        assertThat(Frames.of(framed, "t2")).contains(SHARED);
        assertThat(Frames.own("t1", true).apply(framed)).isEqualTo(framed);
        assertThat(Frames.own("t1", false).apply(framed)).isEqualTo(study());
    }

    @Test
    void withoutAReferenceNothingChanges() {
        Study bare = study().withReference(Optional.empty());
        assertThat(Frames.of(bare, "t1")).isEmpty();
        assertThat(Frames.put("t1", OTHER).apply(bare)).isEqualTo(bare);
        assertThat(Frames.own("t1", true).apply(bare)).isEqualTo(bare);
        assertThat(Frames.ownHorizon(new Line(new Point(0, .5), new Point(1, .5)))
                        .apply(bare))
                .isEqualTo(bare);
    }

    @Test
    void anotherPhotographIsLookedAtAsTheLastOneWasButFramedAnew() {
        Study before = Frames.put("t1", OTHER)
                .andThen(Frames.own("t2", true))
                .andThen(Frames.ownHorizon(new Line(new Point(0, .5), new Point(1, .6))))
                .apply(study());
        Reference other = Reference.to("pond.png", "cd", SHARED);
        Study after = Frames.anotherPhotograph(other).apply(before);
        Reference placed = after.reference().orElseThrow();
        assertThat(placed.file()).isEqualTo("pond.png");
        assertThat(placed.frame()).isEqualTo(SHARED);
        assertThat(placed.ownHorizon()).isEmpty();
        assertThat(placed.fade()).isEqualTo(.3);
        assertThat(placed.squint()).isEqualTo(Squint.gaussian(.02));
        assertThat(placed.split()).hasValue(4);
        assertThat(Frames.isOwn(after, "t2")).isFalse();
        assertThat(after.thumbnails().get(0).marks())
                .isEqualTo(study().thumbnails().get(0).marks());
        Study first = Frames.anotherPhotograph(other).apply(study().withReference(Optional.empty()));
        assertThat(first.reference()).contains(other);
    }

    @Test
    void whatIsPutSnapsToTheGrid() {
        Frame rough = new Frame(new Point(1 / 3.0, 2 / 3.0), 0.1234567891234, -1e-12, false);
        Frame put = Frames.of(Frames.put("t1", rough).apply(study()), "t1").orElseThrow();
        assertThat(put).isEqualTo(new Frame(new Point(.333333333, .666666667), .123456789, 0, false));
        assertThat(1 / put.tilt()).isPositive();
    }
}
