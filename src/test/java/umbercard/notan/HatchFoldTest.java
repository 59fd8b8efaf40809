package umbercard.notan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static umbercard.model.Mark.Kind.LAY;
import static umbercard.model.Mark.Kind.LIFT;
import static umbercard.model.Thumbnail.Ground.DARK;
import static umbercard.model.Thumbnail.Ground.LIGHT;
import static umbercard.notan.Drawings.mark;
import static umbercard.notan.Drawings.thumbnail;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import umbercard.geometry.Eye;
import umbercard.geometry.FrameContact;
import umbercard.geometry.FrameSide;
import umbercard.geometry.Node;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;

class HatchFoldTest {
    private static final double RATIO = 1.35;

    private static HatchFold fresh() {
        return new HatchFold(Eye.DEFAULT);
    }

    /** By the precise overlay, which shares nothing with it but the flattening of curves. */
    private static void sameAsPrecise(Glance glance, Thumbnail drawn, double ratio) {
        Design precise = Fold.of(drawn, ratio);
        double off = 3e-6 * ratio;
        assertThat(glance.darkShare()).isCloseTo(precise.darkShare(), within(3e-6));
        assertThat(glance.dark().x()).isCloseTo(precise.dark().moments().x(), within(ratio * off));
        assertThat(glance.dark().y()).isCloseTo(precise.dark().moments().y(), within(ratio * off));
        assertThat(glance.dark().xy()).isCloseTo(precise.dark().moments().xy(), within(ratio * ratio * off));
    }

    /** Counted again on the curves, by the second way to fill of the test tree; on straight sides, so that both see the same. */
    @Property(seed = "3", tries = 60)
    void sidesAreFollowedJustWithinTheFrame(@ForAll long seed) {
        Random random = new Random(seed);
        List<Mark> marks = new ArrayList<>();
        for (Mark drawn : Drawings.marks(random, random.nextInt(12))) {
            Stream<Point> corners = drawn.outline().nodes().stream().map(Node::at);
            marks.add(drawn.withOutline(Outline.polygon(corners.toList())));
        }
        Thumbnail upright = thumbnail(random.nextBoolean() ? DARK : LIGHT, marks);
        Thumbnail turned = thumbnail(
                upright.ground(),
                marks.stream()
                        .map(mark -> mark.withOutline(mark.outline().mapped(p -> new Point(p.y(), p.x()))))
                        .toList());

        FrameContact contact = fresh().of(upright, RATIO).contact();

        double within = 0x1p-20;
        reaches(contact, FrameSide.TOP, Drawings.row(upright, RATIO, within));
        reaches(contact, FrameSide.BOTTOM, Drawings.row(upright, RATIO, 1 - within));
        reaches(contact, FrameSide.LEFT, Drawings.row(turned, 1, within));
        reaches(contact, FrameSide.RIGHT, Drawings.row(turned, 1, RATIO - within));
    }

    private static void reaches(FrameContact contact, FrameSide side, double expected) {
        assertThat(contact.length(side)).as(side.name()).isCloseTo(expected, within(1e-5));
    }

    @Property(seed = "1", tries = 60)
    void aFoldOnLinesIsThePreciseFold(@ForAll long seed) {
        Random random = new Random(seed);
        double ratio = List.of(0.7, 1.0, 1.35, 2.0).get(random.nextInt(4));
        Thumbnail drawn = thumbnail(random.nextBoolean() ? DARK : LIGHT, Drawings.marks(random, random.nextInt(30)));

        sameAsPrecise(fresh().of(drawn, ratio), drawn, ratio);
    }

    /** Whatever happens between two folds: marks dragged, added, taken away, hidden, moved in the order, the ground turned. */
    @Property(seed = "2", tries = 20)
    void whatIsKeptNeverShows(@ForAll long seed) {
        Random random = new Random(seed);
        List<Mark> marks = new ArrayList<>(Drawings.marks(random, 12));
        Thumbnail.Ground ground = LIGHT;
        HatchFold following = fresh();
        for (int i = 0; i < 25; i++) {
            int at = random.nextInt(marks.size());
            switch (random.nextInt(10)) {
                case 0 -> ground = ground == LIGHT ? DARK : LIGHT;
                case 1 -> marks.add(at, Drawings.marks(random, 1).get(0));
                case 2 -> marks.add(marks.get(at));
                case 3 -> marks.set(at, marks.get(at).withHidden(!marks.get(at).hidden()));
                case 4 -> marks.add(marks.remove(at));
                case 5 -> marks.set(at, marks.get(at).withKind(random.nextBoolean() ? LAY : LIFT));
                case 6 -> {
                    if (marks.size() > 2) {
                        marks.remove(at);
                    }
                }
                default -> drag(marks, at, random);
            }
            Thumbnail drawn = thumbnail(ground, marks);

            Glance followed = following.of(drawn, RATIO);

            Glance anew = fresh().of(drawn, RATIO);
            assertThat(followed.darkShare()).as("step %s", i).isCloseTo(anew.darkShare(), within(1e-12));
            assertThat(followed.dark().xy()).isCloseTo(anew.dark().xy(), within(1e-12));
            assertThat(followed.masses()).isEqualTo(anew.masses());
            assertThat(followed.contact().changes()).isEqualTo(anew.contact().changes());
        }
    }

    private static void drag(List<Mark> marks, int at, Random random) {
        Mark before = marks.get(at);
        double dx = random.nextGaussian() * .05;
        double dy = random.nextGaussian() * .05;
        marks.set(at, before.withOutline(before.outline().mapped(p -> p.plus(dx, dy))));
    }

    @Test
    void anEmptyCardIsAllOfOneValue() {
        assertThat(fresh().of(thumbnail(LIGHT, List.of()), RATIO).darkShare()).isZero();
        assertThat(fresh().of(thumbnail(LIGHT, List.of()), RATIO).masses()).isEqualTo(new MassCounts(0, 1));

        Glance dark = fresh().of(thumbnail(DARK, List.of()), RATIO);

        assertThat(dark.darkShare()).isCloseTo(1, within(1e-6));
        assertThat(dark.masses()).isEqualTo(new MassCounts(1, 0));
        assertThat(dark.contact().share(FrameSide.TOP)).isEqualTo(1);
    }

    @Test
    void marksThatCoverACardCoverItAll() {
        Outline all = Outline.rectangle(-1, -1, 3, 3);

        assertThat(fresh().of(thumbnail(LIGHT, List.of(mark(LAY, all))), RATIO).darkShare())
                .isCloseTo(1, within(1e-6));
        assertThat(fresh().of(thumbnail(DARK, List.of(mark(LIFT, all))), RATIO).darkShare())
                .isZero();
    }

    private static MassCounts masses(Outline... laid) {
        List<Mark> marks = new ArrayList<>();
        for (Outline outline : laid) {
            marks.add(mark(LAY, outline));
        }
        return fresh().of(thumbnail(LIGHT, marks), RATIO).masses();
    }

    /** The eye's width is 0.003 of the diagonal: 0.005 here. */
    @Test
    void aNeckJoinsMassesOnlyIfTheEyeSeesIt() {
        Outline left = Outline.rectangle(.1, .2, .5, .8);
        Outline right = Outline.rectangle(.7, .2, 1.1, .8);

        assertThat(masses(left, right)).isEqualTo(new MassCounts(2, 1));
        assertThat(masses(left, right, Outline.rectangle(.4, .5, .8, .502))).isEqualTo(new MassCounts(2, 1));
        assertThat(masses(left, right, Outline.rectangle(.4, .5, .8, .51))).isEqualTo(new MassCounts(1, 1));
        assertThat(masses(
                        left,
                        right,
                        Outline.polygon(List.of(
                                new Point(.4, .3), new Point(.8, .6), new Point(.8, .602), new Point(.4, .302)))))
                .isEqualTo(new MassCounts(2, 1));
    }

    @Test
    void aGapPartsMassesOnlyIfTheEyeSeesIt() {
        Outline left = Outline.rectangle(.1, -1, .6, 2);

        assertThat(masses(left, Outline.rectangle(.602, -1, 1.1, 2))).isEqualTo(new MassCounts(1, 2));
        assertThat(masses(left, Outline.rectangle(.61, -1, 1.1, 2))).isEqualTo(new MassCounts(2, 3));
    }

    @Test
    void aMassIsNotSmallerThanTheEyeAsks() {
        HatchFold strict = new HatchFold(new Eye(0.003, 0.02));
        Thumbnail drawn = thumbnail(
                LIGHT,
                List.of(mark(LAY, Outline.rectangle(.1, .1, .2, .2)), mark(LAY, Outline.rectangle(.5, .5, .7, .7))));

        assertThat(strict.of(drawn, RATIO).masses()).isEqualTo(new MassCounts(1, 1));
    }
}
