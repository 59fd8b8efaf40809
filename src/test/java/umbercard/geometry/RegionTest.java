package umbercard.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static umbercard.geometry.Shapes.polygon;

import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RegionTest {
    private static final Offset<Double> GRID = within(1e-8);

    private static final Region SQUARE = Region.rectangle(0, 0, 1, 1);

    /** Figures from geometry_checks.csv, row "pentagram {5/2}". */
    @Test
    void aPentagramFillsAsInkDoes() {
        Outline pentagram = Shapes.star(5, 2);

        assertThat(Region.of(pentagram).area()).isCloseTo(1.12256994145, GRID);
        assertThat(Region.evenOdd(List.of(pentagram)).area()).isCloseTo(0.775676752167, GRID);
        assertThat(Region.of(pentagram).pieces()).hasSize(1);
        assertThat(Region.evenOdd(List.of(pentagram)).pieces()).hasSize(5);
    }

    /** Figures from geometry_checks.csv, row "bow-tie polygon". */
    @Test
    void aBowTieFillsBothItsHalves() {
        Region bowTie = Region.of(polygon(0, 0, 2, 2, 2, 0, 0, 2));

        assertThat(bowTie.area()).isCloseTo(2, GRID);
        assertThat(bowTie.pieces()).hasSize(2);
        assertThat(bowTie.contains(new Point(1.9, 1))).isTrue();
        assertThat(bowTie.contains(new Point(1, 1.9))).isFalse();
    }

    @Test
    void aLoopDrawnTwiceIsFilledOnce() {
        assertThat(Region.of(polygon(0, 0, 1, 0, 1, 1, 0, 1, 0, 0, 1, 0, 1, 1, 0, 1))
                        .area())
                .isCloseTo(1, GRID);
    }

    @Test
    void anOutlineThatRunsTheOtherWayCutsAHole() {
        Outline outer = Outline.rectangle(0, 0, 3, 3);
        Outline inner = Outline.rectangle(1, 1, 2, 2);

        Region ring = Region.of(List.of(outer, Shapes.reversed(inner)));

        assertThat(ring.area()).isCloseTo(8, GRID);
        assertThat(ring.perimeter()).isCloseTo(16, GRID);
        assertThat(ring.contains(new Point(1.5, 1.5))).isFalse();
        assertThat(ring.outlines()).hasSize(2);
        assertThat(Region.of(List.of(outer, inner)).area()).isCloseTo(9, GRID);
        assertThat(Region.evenOdd(List.of(outer, inner)).area()).isCloseTo(8, GRID);
    }

    @Test
    void outlinesDescribeTheRegionByBothRules() {
        Region holed = Region.rectangle(0, 0, 9, 9)
                .minus(Region.rectangle(1, 1, 4, 4))
                .minus(Region.rectangle(5, 5, 9, 8))
                .union(Region.rectangle(2, 2, 3, 3));

        assertThat(holed.area()).isCloseTo(81 - 9 - 12 + 1, GRID);
        assertThat(holed.pieces()).hasSize(2);
        assertThat(Region.evenOdd(holed.outlines()).area()).isCloseTo(holed.area(), GRID);
        assertThat(Region.of(holed.outlines()).area()).isCloseTo(holed.area(), GRID);
    }

    @Test
    void piecesKeepTheirOwnHoles() {
        Region ring = SQUARE.minus(Region.rectangle(.2, .2, .8, .8));
        Region island = Region.rectangle(.4, .4, .6, .6).minus(Region.rectangle(.45, .45, .55, .55));

        List<Region> pieces = ring.union(island).pieces();

        assertThat(pieces.stream().map(piece -> piece.outlines().size())).containsExactly(2, 2);
        assertThat(pieces.get(0).area()).isCloseTo(1 - .36, GRID);
        assertThat(pieces.get(1).area()).isCloseTo(.04 - .01, GRID);
    }

    @Test
    void aHoleThatTouchesTheBorderInAPointStaysAHole() {
        Region pinched = SQUARE.minus(Region.of(polygon(0, .5, .5, .3, .5, .7)));

        assertThat(pinched.pieces()).hasSize(1);
        assertThat(pinched.outlines()).hasSize(2);
        assertThat(pinched.area()).isCloseTo(1 - .1, GRID);
    }

    @Test
    void touchingHolesInARowBelongToTheSamePiece() {
        Region cut = SQUARE;
        for (int i = 1; i < 9; i++) {
            double x = i / 10.0;
            cut = cut.minus(Region.of(polygon(x, .5, x + .05, .45, x + .1, .5, x + .05, .55)));
        }
        assertThat(cut.pieces()).hasSize(1);
        assertThat(cut.outlines()).hasSize(9);
        assertThat(cut.area()).isCloseTo(1 - 8 * .005, GRID);
    }

    @Test
    void joiningCuttingAndIntersectingGiveTheirAreas() {
        Region moved = Region.rectangle(.5, .5, 1.5, 1.5);

        assertThat(SQUARE.union(moved).area()).isCloseTo(1.75, GRID);
        assertThat(SQUARE.minus(moved).area()).isCloseTo(.75, GRID);
        assertThat(SQUARE.intersect(moved).area()).isCloseTo(.25, GRID);
        assertThat(SQUARE.union(Region.rectangle(2, 0, 3, 1)).pieces()).hasSize(2);
        assertThat(SQUARE.union(Region.rectangle(1, 0, 2, 1)).pieces()).hasSize(1);
        assertThat(SQUARE.union(Region.rectangle(1, 1, 2, 2)).pieces()).hasSize(2);
        assertThat(SQUARE.intersect(Region.rectangle(1, 0, 2, 1)).isEmpty()).isTrue();
        assertThat(SQUARE.minus(SQUARE).isEmpty()).isTrue();
        assertThat(SQUARE.minus(Region.empty()).area()).isEqualTo(1);
        assertThat(Region.empty().union(SQUARE).area()).isEqualTo(1);
    }

    @Test
    void theEmptyRegionHasNothing() {
        Region empty = Region.empty();

        assertThat(empty.isEmpty()).isTrue();
        assertThat(empty.area()).isZero();
        assertThat(empty.perimeter()).isZero();
        assertThat(empty.moments()).isEqualTo(Moments.ZERO);
        assertThat(empty.contains(new Point(0, 0))).isFalse();
        assertThat(empty.pieces()).isEmpty();
        assertThat(empty.outlines()).isEmpty();
        assertThat(empty.minus(SQUARE).isEmpty()).isTrue();
        assertThat(empty.union(empty).isEmpty()).isTrue();
    }

    @Test
    void theBorderBelongsToTheRegion() {
        assertThat(SQUARE.contains(new Point(0, .5))).isTrue();
        assertThat(SQUARE.contains(new Point(1, 1))).isTrue();
        assertThat(SQUARE.contains(new Point(1 + 1e-8, 1))).isFalse();
    }

    @Test
    void whatEnclosesNothingIsEmpty() {
        assertThat(Region.of(List.of()).isEmpty()).isTrue();
        assertThat(Region.of(new Outline(List.of())).isEmpty()).isTrue();
        assertThat(Region.of(polygon(.3, .3)).isEmpty()).isTrue();
        assertThat(Region.of(polygon(.3, .3, .9, .4)).isEmpty()).isTrue();
        assertThat(Region.of(polygon(.3, .3, .3, .3, .3, .3, .3, .3)).isEmpty()).isTrue();
        assertThat(Region.of(polygon(0, 0, .5, .5, 1, 1, .7, .7)).isEmpty()).isTrue();
        assertThat(Region.rectangle(0, 0, 0, 1).isEmpty()).isTrue();
        Point a = new Point(0, 0);
        Point b = new Point(1, 1);
        Node there = new Node(a, a, new Point(.3, .9), true);
        Node back = new Node(b, new Point(.3, .9), new Point(.3, .9), true);
        assertThat(Region.of(new Outline(List.of(there, back, new Node(a, new Point(.3, .9), a, true))))
                        .isEmpty())
                .isTrue();
    }

    @Test
    void spikesDuplicatesAndPointsInLineAddNothing() {
        Region plain = Region.of(polygon(0, 0, .5, 0, .5, 0, 1, 0, 1, 1, 1.7, 1.9, 1, 1, .4, 1, 0, 1, 0, 1));

        assertThat(plain.area()).isCloseTo(1, GRID);
        assertThat(plain.perimeter()).isCloseTo(4, GRID);
        assertThat(plain.outlines())
                .singleElement()
                .satisfies(ring -> assertThat(ring.nodes()).hasSize(4));
    }

    @ParameterizedTest
    @ValueSource(doubles = {10, 1e4, 1e6, 1e9, 1e30, 1e300, Double.MAX_VALUE})
    void pointsFarOutsideAreHeld(double far) {
        Region big = Region.of(polygon(-far, -far, far, -far, far, far, -far, far));
        Point pull = new Point(far, .5);
        Region curved = Region.of(
                new Outline(List.of(Node.sharp(0, 0), new Node(new Point(1, 1), pull, pull, true), Node.sharp(0, 1))));

        assertThat(big.intersect(SQUARE).area()).isCloseTo(1, GRID);
        assertThat(SQUARE.minus(big).isEmpty()).isTrue();
        assertThat(curved.intersect(SQUARE).area()).isBetween(0.0, 1.0);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1e-15, 1e-12, 1e-11, 1e-10, 1e-9, 1e-8, 1e-7, 1e-6, 1e-5, 1e-4})
    void nearCopiesAreNeverSilentlyWrong(double by) {
        Outline blob = Shapes.ellipse(.5, .5, .4, .3, 13);
        Region one = Region.of(blob);
        Region two = Region.of(blob.mapped(p -> new Point(p.x() + by, p.y() - by / 3)));

        assertThat(one.union(two).area() + one.intersect(two).area()).isCloseTo(one.area() + two.area(), within(1e-9));
        assertThat(one.minus(two).area())
                .isCloseTo(one.area() - one.intersect(two).area(), within(1e-9));
        assertThat(one.minus(two).area()).isLessThan(2 * by + 1e-8);
    }

    @Test
    void aHundredThousandPointsAreFilled() {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < 100_000; i++) {
            double angle = 2 * Math.PI * i / 100_000;
            double r = .4 + .05 * Math.sin(700 * angle);
            points.add(new Point(r * Math.cos(angle), r * Math.sin(angle)));
        }
        Outline wavy = Outline.polygon(points);

        assertThat(Region.of(wavy).area()).isCloseTo(wavy.moments().area(), GRID);
    }
}
