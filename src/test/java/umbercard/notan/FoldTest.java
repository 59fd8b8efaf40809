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
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import umbercard.geometry.Outline;
import umbercard.geometry.Region;
import umbercard.geometry.Rows;
import umbercard.geometry.Shapes;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;

class FoldTest {
    private static final double RATIO = 1.25;
    private static final Offset<Double> GRID = within(1e-8);

    private static double share(Thumbnail.Ground ground, Mark... marks) {
        return Fold.of(thumbnail(ground, List.of(marks)), RATIO).darkShare();
    }

    private static void keeping(long seed, Thumbnail drawn, Runnable checks) {
        Drawing drawing = Drawing.of("FoldTest", RATIO, drawn);
        FailingDrawings.keeping(drawing.from("FoldTest", List.of("FoldTest, seed " + seed + ".")), checks);
    }

    private static Outline box(double left, double top, double right, double bottom) {
        return Outline.rectangle(left, top, right, bottom);
    }

    @Test
    void anEmptyCardIsItsGround() {
        assertThat(share(LIGHT)).isZero();
        assertThat(share(DARK)).isEqualTo(1);
    }

    @Test
    void marksCountInTheOrderTheyWereMade() {
        Mark lay = mark(LAY, box(0, 0, RATIO, .5));
        Mark lift = mark(LIFT, box(0, .25, RATIO, .75));

        assertThat(share(LIGHT, lay, lift)).isCloseTo(.25, GRID);
        assertThat(share(LIGHT, lift, lay)).isCloseTo(.5, GRID);
        assertThat(share(DARK, lay, lift)).isCloseTo(.5, GRID);
        assertThat(share(DARK, lift, lay)).isCloseTo(.75, GRID);
    }

    @Test
    void aHiddenMarkCountsNothing() {
        assertThat(share(LIGHT, mark(LAY, box(0, 0, 1, 1)).withHidden(true))).isZero();
        assertThat(share(DARK, mark(LIFT, box(0, 0, 1, 1)).withHidden(true))).isEqualTo(1);
    }

    @Test
    void whatLiesOutsideTheFrameIsCutOff() {
        assertThat(share(LIGHT, mark(LAY, box(-5, .5, 90, 7)))).isCloseTo(.5, GRID);
        assertThat(share(LIGHT, mark(LAY, box(2, 2, 3, 3)))).isZero();
        assertThat(share(LIGHT, mark(LAY, box(-1e9, -1e9, 1e9, 1e9)))).isEqualTo(1);
    }

    @Test
    void aStrokeThatCrossesItselfLaysAsInk() {
        Outline twice = Shapes.polygon(.1, .1, .6, .1, .6, .6, .1, .6, .1, .1, .6, .1, .6, .6, .1, .6);

        assertThat(share(LIGHT, mark(LAY, twice))).isCloseTo(.25 / RATIO, GRID);
        assertThat(share(DARK, mark(LIFT, twice))).isCloseTo(1 - .25 / RATIO, GRID);
    }

    @Test
    void aRoundMassHasItsPublishedArea() {
        Outline disc = Shapes.ellipse(.6, .5, .4, .4, 64);

        assertThat(Fold.of(thumbnail(LIGHT, List.of(mark(LAY, disc))), RATIO)
                        .dark()
                        .area())
                .isCloseTo(Math.PI * .16, GRID);
    }

    @Property(seed = "1", tries = 25)
    void sharesAgreeWithRowsOfTheDrawnCurves(@ForAll long seed) {
        Random random = new Random(seed);
        Thumbnail drawn = thumbnail(random.nextBoolean() ? DARK : LIGHT, Drawings.marks(random, 12));
        List<Outline> rings = Fold.of(drawn, RATIO).dark().outlines();

        int rows = 100;
        double off = 0;
        for (int i = 0; i < rows; i++) {
            double y = (i + random.nextDouble()) / rows;
            off += Math.abs(Rows.length(Rows.filled(rings, y), RATIO) - Drawings.row(drawn, RATIO, y)) / rows;
        }
        // Rows of a curve and its polygon differ by up to twice the tolerance of flattening at every border they cross.
        double mean = off;
        keeping(seed, drawn, () -> assertThat(mean).as("seed %s", seed).isLessThan(2e-4));
    }

    /** Straight outlines need no flattening, so rows agree to the grid. */
    @Property(seed = "2", tries = 25)
    void straightSharesAgreeWithRowsToTheGrid(@ForAll long seed) {
        Random random = new Random(seed);
        List<Mark> marks = new ArrayList<>(Drawings.marks(random, 16));
        marks.replaceAll(mark -> mark.withOutline(Outline.polygon(
                mark.outline().nodes().stream().map(node -> node.at()).toList())));
        Thumbnail drawn = thumbnail(random.nextBoolean() ? DARK : LIGHT, marks);
        List<Outline> rings = Fold.of(drawn, RATIO).dark().outlines();

        int rows = 100;
        double off = 0;
        for (int i = 0; i < rows; i++) {
            double y = (i + random.nextDouble()) / rows;
            off += Math.abs(Rows.length(Rows.filled(rings, y), RATIO) - Drawings.row(drawn, RATIO, y)) / rows;
        }
        double mean = off;
        keeping(seed, drawn, () -> assertThat(mean).as("seed %s", seed).isLessThan(1e-7));
    }

    @Property(seed = "3", tries = 25)
    void darkAndLightShareTheFrame(@ForAll long seed) {
        Random random = new Random(seed);
        Thumbnail drawn = thumbnail(LIGHT, Drawings.marks(random, 10));
        keeping(seed, drawn, () -> {
            Design design = Fold.of(drawn, RATIO);

            assertThat(design.dark().area() + design.light().area()).isCloseTo(RATIO, within(1e-7));
            assertThat(design.dark().intersect(design.light()).area()).isLessThan(1e-7);
            assertThat(design.dark().minus(design.frame()).isEmpty()).isTrue();
        });
    }

    @Property(seed = "4", tries = 25)
    void turningTheGroundAndEveryMarkSwapsDarkAndLight(@ForAll long seed) {
        Random random = new Random(seed);
        List<Mark> marks = Drawings.marks(random, 10);
        List<Mark> turned = marks.stream()
                .map(mark -> mark.withKind(mark.kind() == LAY ? LIFT : LAY))
                .toList();

        keeping(seed, thumbnail(LIGHT, marks), () -> {
            double dark = Fold.of(thumbnail(LIGHT, marks), RATIO).darkShare();
            double light = Fold.of(thumbnail(DARK, turned), RATIO).darkShare();
            assertThat(dark + light).isCloseTo(1, within(1e-7));
        });
    }

    @Property(seed = "5", tries = 25)
    void anyOrderOfMarksOfOneKindGivesTheSame(@ForAll long seed) {
        Random random = new Random(seed);
        List<Mark> marks = new ArrayList<>(Drawings.marks(random, 9));
        marks.replaceAll(mark -> mark.withKind(LAY));
        double once = Fold.of(thumbnail(LIGHT, marks), RATIO).darkShare();
        Collections.shuffle(marks, random);

        assertThat(Fold.of(thumbnail(LIGHT, marks), RATIO).darkShare()).isCloseTo(once, within(1e-7));
        Region union = Region.empty();
        for (Mark mark : marks) {
            union = mark.hidden() ? union : union.union(Region.of(mark.outline()));
        }
        assertThat(union.intersect(Region.rectangle(0, 0, RATIO, 1)).area() / RATIO)
                .isCloseTo(once, within(1e-7));
    }
}
