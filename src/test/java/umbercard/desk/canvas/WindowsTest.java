package umbercard.desk.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import umbercard.geometry.Node;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;

class WindowsTest {
    private static final Mark LOW = new Mark("m1", Mark.Kind.LAY, Outline.rectangle(0, .5, 1, 1));
    private static final Mark HIGH = new Mark("m2", Mark.Kind.LIFT, Outline.rectangle(.2, .1, .4, .3));

    private static Rectangle2D box(double left, double top, double right, double bottom) {
        return new Rectangle2D.Double(left, top, right - left, bottom - top);
    }

    private static Mark withNode(Mark mark, int place, Node node) {
        List<Node> nodes = new ArrayList<>(mark.outline().nodes());
        nodes.set(place, node);
        return mark.withOutline(new Outline(nodes));
    }

    @Test
    void nothingChangedIsNowhere() {
        assertThat(Windows.isNowhere(Windows.between(List.of(LOW, HIGH), List.of(LOW, HIGH))))
                .isTrue();
        assertThat(Windows.isNowhere(Windows.between(List.of(LOW), List.of(LOW.withId("m9")))))
                .isTrue();
        assertThat(Windows.pixels(Windows.between(List.of(), List.of()), 100).isEmpty())
                .isTrue();
    }

    @Test
    void aMovedPointChangesTheSidesThatMeetThereWhereTheyWereAndWhereTheyAre() {
        Mark in = withNode(HIGH, 0, Node.sharp(.25, .15));
        Mark out = withNode(HIGH, 0, Node.sharp(.15, .05));
        assertThat(Windows.between(List.of(LOW, HIGH), List.of(LOW, in))).isEqualTo(box(.2, .1, .4, .3));
        assertThat(Windows.between(List.of(out), List.of(in))).isEqualTo(box(.15, .05, .4, .3));
        Mark edge = withNode(LOW, 3, Node.sharp(0, .9));
        assertThat(Windows.between(List.of(LOW), List.of(edge))).isEqualTo(box(0, .5, 1, 1));
    }

    @Test
    void farSidesOfAMarkAreNotInTheWindow() {
        Outline ten = Outline.polygon(List.of(
                new Point(0, 0),
                new Point(1, 0),
                new Point(1, .9),
                new Point(.6, 1),
                new Point(.5, 1),
                new Point(0, 1)));
        Mark mark = new Mark("m", Mark.Kind.LAY, ten);
        Mark moved = withNode(mark, 4, Node.sharp(.55, .98));
        assertThat(Windows.between(List.of(mark), List.of(moved))).isEqualTo(box(0, .98, .6, 1));
    }

    @Test
    void pullsCount() {
        Mark pulled = withNode(HIGH, 1, new Node(new Point(.4, .1), new Point(.3, -.2), new Point(.4, .1), true));
        assertThat(Windows.between(List.of(HIGH), List.of(pulled)).getMinY()).isEqualTo(-.2);
    }

    @Test
    void anotherKindOrNumberOfPointsChangesTheWholeMark() {
        Rectangle2D all = box(.2, .1, .4, .3);
        assertThat(Windows.between(List.of(HIGH), List.of(HIGH.withKind(Mark.Kind.LAY))))
                .isEqualTo(all);
        Mark less = HIGH.withOutline(new Outline(HIGH.outline().nodes().subList(0, 3)));
        assertThat(Windows.between(List.of(HIGH), List.of(less))).isEqualTo(all);
        assertThat(Windows.between(List.of(less), List.of(HIGH))).isEqualTo(all);
    }

    @Test
    void oneMoreOneLessOrTheOtherOrderChangesWhatIsNotSharedAtTheEnds() {
        assertThat(Windows.between(List.of(LOW), List.of(LOW, HIGH))).isEqualTo(box(.2, .1, .4, .3));
        assertThat(Windows.between(List.of(LOW, HIGH), List.of(HIGH))).isEqualTo(box(0, .5, 1, 1));
        assertThat(Windows.between(List.of(LOW, HIGH), List.of(HIGH, LOW))).isEqualTo(box(0, .1, 1, 1));
    }

    @Test
    void hiddenMarksAreNotVisible() {
        Thumbnail thumbnail = Thumbnail.empty("t", "t").withMarks(List.of(LOW.withHidden(true), HIGH));
        assertThat(Windows.visible(thumbnail)).containsExactly(HIGH);
    }

    @Test
    void pixelsHoldTheSmoothEdgeToo() {
        assertThat(Windows.pixels(box(.1, .2, .3, .4), 100)).isEqualTo(new Rectangle(9, 19, 22, 22));
        assertThat(Windows.pixels(box(.105, .2, .301, .4), 100)).isEqualTo(new Rectangle(9, 19, 23, 22));
    }
}
